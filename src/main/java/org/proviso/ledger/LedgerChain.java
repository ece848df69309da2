package org.proviso.ledger;

import java.util.Optional;
import org.proviso.core.ElectionId;

/** One chain of the ledger: each election has its own, and the office has one for what concerns no election. */
public record LedgerChain(String name) {

    /** Users and roles, and what else the office does outside an election. */
    public static final LedgerChain OFFICE = new LedgerChain("office");

    private static final String OF_ELECTION = "election:";

    /** The chain of one election. */
    public static LedgerChain of(ElectionId electionId) {
        return new LedgerChain(OF_ELECTION + electionId);
    }

    /** The election whose chain it is; empty for the office's. */
    public Optional<ElectionId> election() {
        return name.startsWith(OF_ELECTION)
                ? Optional.of(new ElectionId(name.substring(OF_ELECTION.length())))
                : Optional.empty();
    }
}
