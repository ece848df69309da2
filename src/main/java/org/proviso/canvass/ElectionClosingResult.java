package org.proviso.canvass;

import java.util.List;

/** Whether an election could be closed. */
public sealed interface ElectionClosingResult {

    /** Closed; the hash of the ledger's head, as it is printed on the certificate. */
    record Closed(String headHash) implements ElectionClosingResult {}

    /** Not yet: what does not add up, or cannot be checked, in sentences. */
    record NotYet(List<String> because) implements ElectionClosingResult {}
}
