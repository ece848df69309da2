package org.proviso.board.ui;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.ui.MessageLine;
import org.springframework.dao.OptimisticLockingFailureException;

/** Does an act, refreshes the page, and says the result. */
record BoardActRunner(Runnable after) {

    private static final String STALE =
            "Not saved. Someone else changed this just now. The page shows the current version.";

    /** For a button: a refusal appears in the message line. */
    void take(Supplier<?> act, String done) {
        Optional<String> refused = refused(act);
        if (refused.isPresent()) {
            MessageLine.refused(refused.get());
        } else {
            MessageLine.done(done);
        }
    }

    /**
     * For a dialog, which shows a refusal itself and closes once the act is done. Where something was changed meanwhile, the
     * dialog says so over the page as it was.
     */
    Optional<String> sheet(Supplier<?> act, String done) {
        Optional<String> refused = Optional.ofNullable(words(act.get()));
        after.run();
        if (refused.isEmpty()) {
            MessageLine.done(done);
        }
        return refused;
    }

    /** The words of a refusal; the page is refreshed either way. */
    Optional<String> refused(Supplier<?> act) {
        try {
            return Optional.ofNullable(words(act.get()));
        } catch (OptimisticLockingFailureException e) {
            return Optional.of(STALE);
        } finally {
            after.run();
        }
    }

    /** A refusal shared by many envelopes is said once. */
    private static String together(List<Refusal> refusals) {
        Map<String, List<EnvelopeNumber>> envelopes = new LinkedHashMap<>();
        List<String> said = new ArrayList<>();
        for (Refusal refusal : refusals) {
            if (refusal.about() == null) {
                said.add(refusal.words());
            } else {
                envelopes
                        .computeIfAbsent(refusal.words(), any -> new ArrayList<>())
                        .add(refusal.about());
            }
        }
        envelopes.forEach((words, numbers) -> said.add(BoardWords.numbers(numbers, 6) + ": " + words));
        return String.join(" ", said);
    }

    private static @Nullable String words(Object result) {
        return result instanceof ActResult.Refused<?> refused ? together(refused.refusals()) : null;
    }
}
