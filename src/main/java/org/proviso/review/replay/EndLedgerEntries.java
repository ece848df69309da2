package org.proviso.review.replay;

import java.util.Map;
import java.util.Optional;
import org.proviso.core.chain.LedgerEntry;
import org.proviso.review.CaseAct;
import org.proviso.review.CaseState;
import org.proviso.review.Proposal;

/** Entries of what was proposed to end without a decision, what became of it, and of other counties' receipts. */
final class EndLedgerEntries {

    private static final String STANDING = Proposal.State.STANDING.code();

    private EndLedgerEntries() {}

    static void put(Map<String, CaseLedgerEntry> kinds) {
        kinds.put("end_proposed", (trail, entry, all) -> proposed(trail, entry));
        kinds.put("end_returned", (trail, entry, all) -> {
            read(trail, Proposal.State.RETURNED, entry);
            return trail.follow(CaseAct.RETURN, "");
        });
        kinds.put("sent_on", (trail, entry, all) -> confirmed(trail, entry, CaseAct.SEND_ON, CaseState.SENT_ON));
        kinds.put("ended", (trail, entry, all) -> confirmed(trail, entry, CaseAct.END, CaseState.ENDED));
        kinds.put("county_receipt_recorded", (trail, entry, all) -> received(trail, entry));
    }

    private static boolean proposed(CaseTrail trail, LedgerEntry entry) {
        Map<String, Object> said = entry.payload();
        trail.add(
                CaseTable.END_PROPOSAL,
                new ExpectedRow(entry)
                        .with("ends_as", said.get("as"))
                        .with("to_county", said.get("county"))
                        .with("reasons", said.get("reasons"))
                        .with("legal_reference", said.get("reference"))
                        .with("assessment_no", said.get("assessment"))
                        .with("proposed_by", entry.actor())
                        .with("state", STANDING));
        return trail.follow(CaseAct.PROPOSE_END, "");
    }

    /** An entry that names no proposal is of one person alone, from before an end took two. */
    private static boolean confirmed(CaseTrail trail, LedgerEntry entry, CaseAct act, CaseState end) {
        if (!entry.payload().containsKey("proposal")) {
            return trail.endAlone(end);
        }
        read(trail, Proposal.State.AGREED, entry);
        return trail.follow(act, "");
    }

    private static void read(CaseTrail trail, Proposal.State state, LedgerEntry entry) {
        standing(trail)
                .ifPresent(row -> row.with("state", state.code())
                        .with("read_by", entry.actor())
                        .with("note", entry.payload().get("note")));
    }

    private static Optional<ExpectedRow> standing(CaseTrail trail) {
        return trail.newest(CaseTable.END_PROPOSAL).filter(row -> row.has("state", STANDING));
    }

    /** What was proposed to end waits no more, and nobody read it; false where nothing waited. */
    static boolean endStanding(CaseTrail trail, Proposal.State state) {
        Optional<ExpectedRow> standing = standing(trail);
        standing.ifPresent(row -> row.with("state", state.code()));
        return standing.isPresent();
    }

    private static boolean received(CaseTrail trail, LedgerEntry entry) {
        Map<String, Object> said = entry.payload();
        trail.add(
                CaseTable.COUNTY_RECEIPT,
                new ExpectedRow(entry)
                        .with("received_on", said.get("received_on"))
                        .with("received_by", said.get("received_by"))
                        .with("county_reference", said.get("reference"))
                        .with("recorded_by", entry.actor()));
        return trail.stays();
    }

    /** A case that is not sent on any more has no receipt that holds. */
    static void setReceiptAside(CaseTrail trail) {
        trail.rows(CaseTable.COUNTY_RECEIPT).forEach(row -> row.with("set_aside_at", "yes"));
    }
}
