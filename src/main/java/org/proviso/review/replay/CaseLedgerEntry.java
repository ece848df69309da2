package org.proviso.review.replay;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.proviso.core.chain.LedgerEntry;
import org.proviso.review.CaseAct;
import org.proviso.review.CaseState;

/** What each kind of entry about a case says. */
@FunctionalInterface
interface CaseLedgerEntry {

    /** Brings the trail to where it is after the entry; false where that leads nowhere. */
    boolean apply(CaseTrail trail, LedgerEntry entry, CaseTrails all);

    static Optional<CaseLedgerEntry> of(String act) {
        return Optional.ofNullable(Kinds.BY_ACT.get(act));
    }

    /** Every kind by the word of the act. */
    final class Kinds {

        private static final Map<String, CaseLedgerEntry> BY_ACT = new HashMap<>();

        static {
            BY_ACT.put("taken", (trail, entry, all) -> trail.follow(CaseAct.TAKE, entry.actor()));
            BY_ACT.put("given_back", (trail, entry, all) -> trail.follow(CaseAct.GIVE_BACK, ""));
            BY_ACT.put("released", (trail, entry, all) -> trail.follow(CaseAct.RELEASE, ""));
            BY_ACT.put("envelope_keyed", (trail, entry, all) -> keyed(trail));
            BY_ACT.put("envelope_keyed_otherwise", (trail, entry, all) -> keyed(trail));
            ReviewLedgerEntries.put(BY_ACT);
            DecisionLedgerEntries.put(BY_ACT);
            EndLedgerEntries.put(BY_ACT);
            MailLedgerEntries.put(BY_ACT);
        }

        private Kinds() {}

        /** Keying opens a case that waited for it, and changes nothing of where another one stands. */
        private static boolean keyed(CaseTrail trail) {
            return trail.state() != CaseState.RECEIVED || trail.follow(CaseAct.KEY, "");
        }
    }
}
