package org.proviso.intake.desk;

import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.proviso.access.AccessService;
import org.proviso.access.Permission;
import org.proviso.core.Code;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.adjudication.judging.DueAsk;
import org.proviso.core.calendar.Deadline;
import org.proviso.core.rules.Ask;
import org.proviso.core.rules.DeadlineBook;
import org.proviso.core.rules.ResolvedRule;
import org.proviso.core.rules.Rule;
import org.proviso.election.RulesService;
import org.proviso.intake.CureStore;
import org.proviso.intake.cure.CaseAfterCure;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What the cure page reads: the envelope, earlier evidence, and the deadline. */
@Service
@Transactional(readOnly = true)
public class CureLookupService {

    private static final DateTimeFormatter MOMENT =
            DateTimeFormatter.ofPattern("EEEE, MMMM d, yyyy, h:mm a", Locale.US);

    private final FoundEnvelopeStore envelopes;
    private final CureStore cures;
    private final RulesService rules;
    private final CaseAfterCure after;
    private final AccessService access;

    CureLookupService(
            FoundEnvelopeStore envelopes,
            CureStore cures,
            RulesService rules,
            CaseAfterCure after,
            AccessService access) {
        this.after = after;
        this.envelopes = envelopes;
        this.cures = cures;
        this.rules = rules;
        this.access = access;
    }

    /** Envelopes with that envelope or receipt number, or whose voter's last name begins with it. */
    public List<FoundEnvelope> find(ElectionId electionId, String sought, int limit) {
        access.demand(Permission.RECORD_CURE_EVIDENCE);
        return envelopes.find(electionId, sought, limit);
    }

    /** Earlier evidence in the order in which it was keyed, what was taken back too. */
    public List<BroughtPaper> brought(ElectionId electionId, EnvelopeNumber envelopeNo) {
        access.demand(Permission.RECORD_CURE_EVIDENCE);
        return cures.rows(electionId, envelopeNo).stream()
                .map(row -> new BroughtPaper(row.number(), words(row), row.isTakenBack()))
                .toList();
    }

    private static String words(CureStore.CureRow row) {
        String ask = Code.find(Ask.class, row.ask()).orElseThrow().words();
        String sentence = "Evidence to " + ask + ", stamped " + words(row.receivedAt()) + ": " + row.words();
        return row.isTakenBack() ? sentence + " Taken back: " + row.because() : sentence;
    }

    /** The deadline, and whether this stamp is on time. */
    public String inTime(ElectionId electionId, Ask ask, @Nullable LocalDateTime stamp) {
        access.demand(Permission.RECORD_CURE_EVIDENCE);
        DeadlineBook book = rules.book(electionId);
        ResolvedRule given = book.pack().of(Rule.cure(ask));
        Optional<Deadline> deadline = book.cure(ask, null);
        if (book.waitsForTheMeeting(ask)) {
            return (stamp == null ? "" : "Stamped on time. ")
                    + "Deadline: when the board meets; the date is not set yet ("
                    + given.reference().words() + ").";
        }
        if (deadline.isEmpty()) {
            return given.isKnown()
                    ? "Due by: " + given.value().inWords() + " ("
                            + given.reference().words() + ")."
                    : "The rules give no deadline for this. Ask counsel.";
        }
        String until = "Deadline: " + words(deadline.get().lastMoment()) + " ("
                + given.reference().words() + ").";
        if (stamp == null) {
            return until;
        }
        return deadline.get().hasPassed(stamp) ? "Stamped too late. " + until : "Stamped on time. " + until;
    }

    /** What the voter of this envelope may still bring, each a sentence. */
    public List<String> owed(ElectionId electionId, EnvelopeNumber envelopeNo) {
        access.demand(Permission.RECORD_CURE_EVIDENCE);
        return after.owed(new EnvelopeKey(electionId, envelopeNo)).stream()
                .map(CureLookupService::words)
                .toList();
    }

    /** Whether evidence with this stamp, once recorded, is in time and enough. */
    public CureVerdict verdict(ElectionId electionId, EnvelopeNumber envelopeNo, Ask ask, LocalDateTime stamp) {
        List<String> owed = owed(electionId, envelopeNo);
        DeadlineBook book = rules.book(electionId);
        Optional<Deadline> deadline = book.cure(
                ask, after.told(new EnvelopeKey(electionId, envelopeNo), ask).orElse(null));
        String what = "Evidence to " + ask.words() + ", stamped " + words(stamp);
        if (deadline.isEmpty() && !book.waitsForTheMeeting(ask)) {
            return new CureVerdict(
                    CureVerdict.Kind.NO_DEADLINE,
                    what + ". The rules give no deadline for it that can be told today. Ask counsel.",
                    owed);
        }
        if (deadline.filter(until -> until.hasPassed(stamp)).isPresent()) {
            return new CureVerdict(
                    CureVerdict.Kind.TOO_LATE,
                    what + ": the deadline was " + words(deadline.get().lastMoment()) + ".",
                    owed);
        }
        return owed.isEmpty()
                ? new CureVerdict(CureVerdict.Kind.IN_TIME, what + ". The voter owes nothing more.", owed)
                : new CureVerdict(
                        CureVerdict.Kind.NOT_ENOUGH, what + ". It came in time, but the voter still owes more.", owed);
    }

    private static String words(DueAsk due) {
        return "The voter may still " + due.ask().words() + ", "
                + due.deadline()
                        .map(until -> "until " + words(until.lastMoment()))
                        .orElse(
                                due.untilTheMeeting()
                                        ? "until the board meets, on a date not set yet"
                                        : "until a date not known yet")
                + ".";
    }

    private static String words(LocalDateTime moment) {
        return MOMENT.format(moment).replace("AM", "am").replace("PM", "pm");
    }
}
