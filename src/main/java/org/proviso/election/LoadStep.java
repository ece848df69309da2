package org.proviso.election;

import java.util.Locale;

/** How far a load into the tables is: what is being done, and how many rows of how many; 0 where nobody knows yet. */
public record LoadStep(String words, long rows, long of) {

    /** {@code 300,000 of 1,000,000 rows}; empty where there are none to count. */
    public String figures() {
        if (rows == 0 && of == 0) {
            return "";
        }
        return of == 0
                ? String.format(Locale.US, "%,d rows", rows)
                : String.format(Locale.US, "%,d of %,d rows", rows, of);
    }
}
