package org.proviso.core.adjudication.questions;

import java.util.Optional;
import org.proviso.core.calendar.Deadline;
import org.proviso.core.rules.Ask;

/** Clocks set by hand: every ask in one state, mail ballots past their deadline or not. */
public record FixedClocks(AskStatus all, boolean mailReceiptPassed) implements CaseClocks {

    @Override
    public AskStatus ask(Ask ask) {
        return all;
    }

    @Override
    public Optional<Deadline> deadline(Ask ask) {
        return Optional.empty();
    }

    @Override
    public boolean waitsForTheMeeting(Ask ask) {
        return false;
    }
}
