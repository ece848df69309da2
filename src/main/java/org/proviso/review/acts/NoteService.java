package org.proviso.review.acts;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.jspecify.annotations.Nullable;
import org.proviso.access.Permission;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.UserName;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.review.CaseActSteps;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.door.CaseDoor;
import org.proviso.review.door.LockedCase;
import org.proviso.review.facts.CaseNote;
import org.proviso.review.facts.CaseNoteStore;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * Notes on a case, which everybody reads who has the case before them, in whatever state it is. A note changes no fact and
 * no version of the case. It is never deleted; whoever wrote it corrects it by a newer one, and both stay readable.
 */
@Service
public class NoteService {

    private static final int LONGEST = 4_000;

    private final CaseDoor door;
    private final CaseActSteps steps;
    private final CaseNoteStore notes;

    NoteService(CaseDoor door, CaseActSteps steps, CaseNoteStore notes) {
        this.door = door;
        this.steps = steps;
        this.notes = notes;
    }

    /** Writes a note. */
    @Transactional
    public ActResult<EnvelopeCase> write(EnvelopeKey key, String words) {
        LockedCase act = door.demand(Permission.WRITE_NOTES).lock(key).refuse(() -> notWritten(words));
        return save(act, "note_written", words, null);
    }

    /** Writes a note that takes the place of an earlier one of the same person. */
    @Transactional
    public ActResult<EnvelopeCase> correct(EnvelopeKey key, int number, String words) {
        LockedCase act = door.demand(Permission.WRITE_NOTES).lock(key);
        UserName you = act.user().userName();
        return save(
                act.refuse(() -> notCorrected(notes.of(key), number, you)).refuse(() -> notWritten(words)),
                "note_corrected",
                words,
                number);
    }

    private ActResult<EnvelopeCase> save(LockedCase act, String recorded, String words, @Nullable Integer corrects) {
        AtomicInteger number = new AtomicInteger();
        return act.save(seen -> {
                    number.set(notes.insert(
                            seen.key(), words.strip(), corrects, act.user().userName()));
                    return seen;
                })
                .record(recorded, () -> {
                    Map<String, Object> payload = new HashMap<>();
                    payload.put("note", number.get());
                    payload.put("words", steps.hidden(act.seen().key(), words.strip()));
                    if (corrects != null) {
                        payload.put("corrects", corrects);
                    }
                    return payload;
                });
    }

    private static Optional<Refusal> notCorrected(List<CaseNote> all, int number, UserName by) {
        Optional<CaseNote> note =
                all.stream().filter(one -> one.number() == number).findFirst();
        if (note.isEmpty() || !note.get().writtenBy().equals(by)) {
            return Optional.of(Refusal.of(
                    Why.NOT_WITH_YOU, "Only the person who wrote a note can correct it. Write a note of your own."));
        }
        return Refusal.when(
                note.get().corrected(),
                Why.NOTHING_NEW,
                "This note was corrected meanwhile. Close this sheet and correct the newer one.");
    }

    private static Optional<Refusal> notWritten(String words) {
        return words.isBlank() || words.length() > LONGEST
                ? Optional.of(Refusal.at("words", Why.NO_REASON, "Write between 1 and 4,000 characters."))
                : Optional.empty();
    }
}
