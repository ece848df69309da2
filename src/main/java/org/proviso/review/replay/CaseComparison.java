package org.proviso.review.replay;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.Key;
import org.proviso.core.VoterId;
import org.proviso.ledger.DifferenceCounter;
import org.proviso.review.replay.CaseReplayStore.CaseRow;
import org.proviso.review.replay.CaseTrail.TrailVoter;

/** Compares the rows of one case with its trail in the ledger, and says what differs. */
record CaseComparison(SaltedTextCheck words, DifferenceCounter differences) {

    /** Where the case stands, who has it and of whom it is. */
    void compare(CaseRow row, CaseTrail trail) {
        EnvelopeNumber envelope = row.envelopeNo();
        if (!row.state().equals(trail.state().code())) {
            differ(
                    envelope.value(),
                    "in the table the case is " + row.state().replace('_', ' ') + ", by the ledger it is "
                            + trail.state().spoken() + ".");
        }
        if (row.version() != trail.changes()) {
            differ(
                    envelope.value(),
                    "the row of the case was changed " + row.version()
                            + " times, and the ledger has acts that changed it " + trail.changes() + " times.");
        }
        if (!words.pseudonym(row.takenBy()).equals(trail.takenBy())) {
            differ(envelope.value(), "in the table the case is with somebody else than by the ledger.");
        }
        if (!isOf(row, trail.voter())) {
            differ(envelope.value(), "in the table the case is of another person than by the ledger.");
        }
        if ((row.countedPerson() != null) != trail.counts()) {
            differ(
                    envelope.value(),
                    trail.counts()
                            ? "by the ledger it counts, and the table does not keep its voter from counting again."
                            : "the table keeps its voter from counting, and by the ledger it does not count.");
        }
    }

    private boolean isOf(CaseRow row, Optional<TrailVoter> voter) {
        String person = row.personId();
        return voter.map(found -> person != null && isOf(row.voterId(), person, found))
                .orElse(person == null);
    }

    private boolean isOf(@Nullable VoterId voterId, String personId, TrailVoter voter) {
        return voter.hash().isEmpty()
                ? personId.equals("envelope:" + voter.envelopeNo())
                : voterId != null && words.hides(voter.envelopeNo(), voter.hash(), Key.text(voterId));
    }

    /** What was done to it, row by row. */
    void compare(EnvelopeNumber envelope, CaseTable table, List<Map<String, String>> there, List<ExpectedRow> said) {
        if (there.size() != said.size()) {
            differ(
                    envelope.value(),
                    "of the kind " + table.spoken() + " the table has " + there.size() + " and the ledger "
                            + said.size() + ".");
            return;
        }
        for (int i = 0; i < said.size(); i++) {
            for (CaseColumn column : table.columns()) {
                ExpectedRow row = said.get(i);
                if (!words.fits(envelope, column, row.in(column), there.get(i).getOrDefault(column.name(), ""))) {
                    differ(
                            envelope.value(),
                            table.spoken() + " " + (i + 1) + " has another " + column.spoken() + " than entry "
                                    + row.entry() + " of the ledger and those after it say.");
                }
            }
        }
    }

    void differ(String envelope, String what) {
        differences.add("Envelope " + envelope + ": " + what);
    }
}
