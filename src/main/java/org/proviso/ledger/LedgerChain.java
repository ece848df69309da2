package org.proviso.ledger;

import org.proviso.core.ElectionId;

/** One chain of the ledger: each election has its own, and the office has one for what concerns no election. */
public record LedgerChain(String name) {

    /** Users and roles, and what else the office does outside an election. */
    public static final LedgerChain OFFICE = new LedgerChain("office");

    /** The chain of one election. */
    public static LedgerChain of(ElectionId electionId) {
        return new LedgerChain("election:" + electionId);
    }
}
