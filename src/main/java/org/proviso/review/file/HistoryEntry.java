package org.proviso.review.file;

import java.time.LocalDateTime;

/** One act on a case as the ledger has it: when on the county's clock, by whom (full name), and what. */
public record HistoryEntry(LocalDateTime at, String by, String act) {

    /** For reading: {@code link confirmed}. */
    public String words() {
        return act.replace('_', ' ');
    }
}
