package org.proviso.core.adjudication.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.proviso.core.adjudication.questions.AskStatus;
import org.proviso.core.adjudication.questions.CaseClocks;
import org.proviso.core.calendar.Deadline;
import org.proviso.core.rules.Ask;

/**
 * The clocks set by hand: every ask in the same state, and mail ballots past their deadline or not. One answer reads
 * one ask at most, so setting them alike leaves no combination out.
 */
record ProofClocks(AskStatus asks, boolean mailReceiptPassed) implements CaseClocks {

    static List<ProofClocks> all() {
        List<ProofClocks> worlds = new ArrayList<>();
        for (AskStatus state : AskStatus.values()) {
            worlds.add(new ProofClocks(state, false));
            worlds.add(new ProofClocks(state, true));
        }
        return worlds;
    }

    @Override
    public AskStatus ask(Ask ask) {
        return asks;
    }

    @Override
    public Optional<Deadline> deadline(Ask ask) {
        return Optional.empty();
    }

    @Override
    public boolean waitsForTheMeeting(Ask ask) {
        return false;
    }

    String words() {
        String cure = switch (asks) {
            case RUNNING -> "the voter still has time to cure";
            case OVER -> "the time to cure is over";
            case OVER_WITHOUT_NOTICE -> "the time to cure is over, and no notice was logged";
            case NOT_SETTLED -> "the cure deadline is not known";
        };
        return cure + "; mail ballots " + (mailReceiptPassed ? "may no longer arrive" : "may still arrive");
    }
}
