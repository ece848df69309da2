package org.proviso.ledger;

import java.util.List;

/**
 * What comparing tables with the ledger found: how many things of a kind were compared, how many differences there are,
 * and the first of them in a sentence each, which may be shown to anybody.
 */
public record TableComparison(String what, long things, long differing, List<String> first) {

    /** Whether the tables are as the ledger says. */
    public boolean isWhole() {
        return differing == 0;
    }
}
