package org.proviso.review.replay;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proviso.core.EnvelopeNumber;
import org.proviso.review.CaseAct;
import org.proviso.review.CaseGraph;
import org.proviso.review.CaseState;

/** One case as the entries of the ledger say it should be. Not thread-safe. */
final class CaseTrail {

    /**
     * The voter that a case was found to be of: a record of the roll, whose id is hidden under the salt of the envelope
     * first linked to it, or (no hash) the person of an envelope whose voter is not on the roll.
     */
    record TrailVoter(EnvelopeNumber envelopeNo, String hash) {}

    private final Map<CaseTable, List<ExpectedRow>> rows = new EnumMap<>(CaseTable.class);
    private CaseState state;
    private int changes;
    private String takenBy = "";
    private Optional<TrailVoter> voter = Optional.empty();

    CaseTrail(CaseState state) {
        this.state = state;
    }

    CaseState state() {
        return state;
    }

    /** How often the row of the case was changed. */
    int changes() {
        return changes;
    }

    /** The pseudonym of whoever has the case, empty where nobody has. */
    String takenBy() {
        return takenBy;
    }

    Optional<TrailVoter> voter() {
        return voter;
    }

    List<ExpectedRow> rows(CaseTable table) {
        return rows.getOrDefault(table, List.of());
    }

    Optional<ExpectedRow> newest(CaseTable table) {
        List<ExpectedRow> all = rows(table);
        return all.isEmpty() ? Optional.empty() : Optional.of(all.get(all.size() - 1));
    }

    /** Whether a decision stands by which the ballot, or a part of it, counts. */
    boolean counts() {
        return newest(CaseTable.DECISION)
                .filter(decision -> decision.has("set_aside_at", "") && !decision.has("outcome", "reject"))
                .isPresent();
    }

    void add(CaseTable table, ExpectedRow row) {
        rows.computeIfAbsent(table, any -> new ArrayList<>()).add(row);
    }

    void settle(TrailVoter found) {
        voter = Optional.of(found);
    }

    /** Nobody has settled the voter any more; false where the case itself was settled then. */
    boolean unsettle() {
        voter = Optional.empty();
        changes++;
        return !state.isOver();
    }

    /** Follows an act that leads on; false where it leads nowhere. */
    boolean follow(CaseAct act, String with) {
        Optional<CaseState> next = CaseGraph.step(state, act).ifAccepted();
        next.ifPresent(reached -> {
            state = reached;
            takenBy = with;
            changes++;
        });
        return next.isPresent();
    }

    /** Follows an end that one person did alone, as before it took two; false where nobody could do that. */
    boolean endAlone(CaseState end) {
        boolean could = state == CaseState.IN_REVIEW || (state == CaseState.RECEIVED && end == CaseState.ENDED);
        state = end;
        takenBy = "";
        changes++;
        return could;
    }

    /** Follows an act on a settled case, which stays as it is; false where it is not settled. */
    boolean stays() {
        changes++;
        return state.isOver();
    }

    /** Follows an act of somebody who works on the case, which stays where it is; false where nobody may. */
    boolean work() {
        changes++;
        return state == CaseState.OPEN || state == CaseState.IN_REVIEW;
    }
}
