package org.proviso.review.replay;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.proviso.ledger.DifferenceCounter;
import org.proviso.review.replay.CaseReplayStore.CaseRow;
import org.proviso.review.replay.CaseTrail.TrailVoter;

/** Compares the rows of one case with its trail in the ledger, and says what differs. */
record CaseComparison(SaltedTextCheck words, DifferenceCounter differences) {

    /** Where the case stands, who has it and of whom it is. */
    void compare(CaseRow row, CaseTrail trail) {
        String envelope = row.envelopeNo();
        if (!row.state().equals(trail.state().code())) {
            differ(
                    envelope,
                    "in the table the case is " + row.state().replace('_', ' ') + ", by the ledger it is "
                            + trail.state().spoken() + ".");
        }
        if (row.version() != trail.changes()) {
            differ(
                    envelope,
                    "the row of the case was changed " + row.version()
                            + " times, and the ledger has acts that changed it " + trail.changes() + " times.");
        }
        if (!words.pseudonym(row.takenBy()).equals(trail.takenBy())) {
            differ(envelope, "in the table the case is with somebody else than by the ledger.");
        }
        if (!isOf(row, trail.voter())) {
            differ(envelope, "in the table the case is of another person than by the ledger.");
        }
        if ((row.countedPerson() != null) != trail.counts()) {
            differ(
                    envelope,
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

    private boolean isOf(@Nullable String voterId, String personId, TrailVoter voter) {
        return voter.hash().isEmpty()
                ? personId.equals("envelope:" + voter.envelopeNo())
                : voterId != null && words.hides(voter.envelopeNo(), voter.hash(), voterId);
    }

    /** What was done to it, row by row. */
    void compare(String envelope, CaseTable table, List<Map<String, String>> there, List<ExpectedRow> said) {
        if (there.size() != said.size()) {
            differ(
                    envelope,
                    "of the kind " + table.spoken() + " the table has " + there.size() + " and the ledger "
                            + said.size() + ".");
            return;
        }
        for (int i = 0; i < said.size(); i++) {
            for (CaseColumn column : table.columns()) {
                ExpectedRow row = said.get(i);
                if (!words.fits(envelope, column, row.in(column), there.get(i).getOrDefault(column.name(), ""))) {
                    differ(
                            envelope,
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
