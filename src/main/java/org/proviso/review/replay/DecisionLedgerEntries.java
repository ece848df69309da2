package org.proviso.review.replay;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.proviso.core.chain.LedgerEntry;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.review.CaseAct;
import org.proviso.review.Proposal;

/** Entries of what was proposed, read a second time, decided and opened again. */
final class DecisionLedgerEntries {

    private DecisionLedgerEntries() {}

    static void put(Map<String, CaseLedgerEntry> kinds) {
        kinds.put("proposed", (trail, entry, all) -> proposed(trail, entry));
        kinds.put("proposal_withdrawn", (trail, entry, all) -> {
            end(trail, Proposal.State.WITHDRAWN);
            return trail.follow(CaseAct.WITHDRAW, entry.actor());
        });
        kinds.put("second_review_agreed", (trail, entry, all) -> read(trail, entry, true));
        kinds.put("second_review_returned", (trail, entry, all) -> read(trail, entry, false));
        kinds.put("sent_back", (trail, entry, all) -> returned(trail, CaseAct.RETURN));
        kinds.put("recalled", (trail, entry, all) -> returned(trail, CaseAct.RECALL));
        kinds.put("decided", (trail, entry, all) -> decided(trail, entry));
        kinds.put("let_stand", (trail, entry, all) -> followedUp(trail, entry));
        kinds.put("followed_up", (trail, entry, all) -> followedUp(trail, entry));
        kinds.put("reopened", (trail, entry, all) -> reopened(trail, entry));
    }

    private static boolean proposed(CaseTrail trail, LedgerEntry entry) {
        Map<String, Object> said = entry.payload();
        trail.add(
                CaseTable.PROPOSAL,
                new ExpectedRow(entry)
                        .with("outcome", said.get("as"))
                        .with("reasons", said.get("reasons"))
                        .with("legal_reference", said.get("reference"))
                        .with("departs_because", said.get("departs_because"))
                        .with("assessment_no", said.get("assessment"))
                        .with("proposed_by", entry.actor())
                        .with("state", Proposal.State.STANDING.code()));
        return trail.follow(step(said), "");
    }

    /** An entry from before counting against the rules took a second reader does not say that it does. */
    private static CaseAct step(Map<String, Object> said) {
        if (said.containsKey("against_rules")) {
            return CaseAct.PROPOSE_AGAINST;
        }
        return DecisionOutcome.COUNT.code().equals(said.get("as")) ? CaseAct.PROPOSE_COUNT : CaseAct.PROPOSE_LESS;
    }

    private static boolean read(CaseTrail trail, LedgerEntry entry, boolean agrees) {
        trail.add(
                CaseTable.SECOND_REVIEW,
                new ExpectedRow(entry)
                        .with("proposal_no", trail.rows(CaseTable.PROPOSAL).size())
                        .with("agrees", agrees)
                        .with("note", entry.payload().get("note"))
                        .with("reviewed_by", entry.actor()));
        end(trail, agrees ? Proposal.State.AGREED : Proposal.State.RETURNED);
        return trail.follow(agrees ? CaseAct.AGREE : CaseAct.RETURN, "");
    }

    private static boolean returned(CaseTrail trail, CaseAct act) {
        end(trail, Proposal.State.RETURNED);
        return trail.follow(act, "");
    }

    /** The proposal that waits: of an end without a decision, or else the newest one of an outcome. */
    private static void end(CaseTrail trail, Proposal.State state) {
        if (EndLedgerEntries.endStanding(trail, state)) {
            return;
        }
        trail.newest(CaseTable.PROPOSAL).ifPresent(proposal -> proposal.with("state", state.code()));
    }

    private static boolean decided(CaseTrail trail, LedgerEntry entry) {
        Map<String, Object> said = entry.payload();
        boolean court = "court".equals(said.get("decider"));
        setAside(trail, said.get("departs_because"));
        EndLedgerEntries.endStanding(trail, Proposal.State.RETURNED);
        EndLedgerEntries.setReceiptAside(trail);
        trail.add(
                CaseTable.DECISION,
                new ExpectedRow(entry)
                        .with("outcome", said.get("as"))
                        .with("reasons", said.get("reasons"))
                        .with("legal_reference", said.get(court ? "order_reference" : "reference"))
                        .with("departs_because", said.get("departs_because"))
                        .with("contests", said.get("contests"))
                        .with("assessment_no", said.get("assessment"))
                        .with("decider", said.get("decider"))
                        .with("session_no", said.get("session"))
                        .with("motion_no", said.get("motion"))
                        .with("style_cast", said.get("style_cast"))
                        .with("style_right", said.get("style_right"))
                        .with("held_apart", said.get("held_apart")));
        return trail.follow(court ? CaseAct.ORDER : CaseAct.DECIDE, "");
    }

    private static boolean followedUp(CaseTrail trail, LedgerEntry entry) {
        Map<String, Object> said = entry.payload();
        trail.add(
                CaseTable.FOLLOW_UP,
                new ExpectedRow(entry)
                        .with("decision_no", said.get("decision"))
                        .with("assessment_no", said.get("assessment"))
                        .with("says", said.get("says"))
                        .with("reasons", said.get("reasons"))
                        .with("note", said.get("note"))
                        .with("session_no", said.get("session"))
                        .with("motion_no", said.get("motion"))
                        .with("recorded_by", entry.actor()));
        return trail.stays();
    }

    private static boolean reopened(CaseTrail trail, LedgerEntry entry) {
        setAside(trail, entry.payload().get("because"));
        EndLedgerEntries.setReceiptAside(trail);
        return trail.follow(CaseAct.REOPEN, "");
    }

    /** A decision that stood is set aside when its case is reopened, or when a court orders how it is settled. */
    private static void setAside(CaseTrail trail, @Nullable Object because) {
        trail.rows(CaseTable.DECISION).stream()
                .filter(decision -> decision.has("set_aside_at", ""))
                .forEach(decision -> decision.with("set_aside_at", "yes").with("set_aside_because", because));
    }
}
