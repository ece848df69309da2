package org.proviso.access;

import java.util.List;
import org.proviso.core.chain.LedgerEntry;
import org.proviso.ledger.LedgerChain;

/** What of a chain somebody must not read yet, because they are still to judge the same thing by themselves. */
public interface LedgerVeil {

    /** The entries as that person may read them on a page now; what is withheld is said to be. */
    List<LedgerEntry> shown(LedgerChain chain, List<LedgerEntry> entries, OfficeUser reader);

    /** That person takes the whole chain out as a file, in which nothing can be withheld. */
    void taken(LedgerChain chain, OfficeUser reader);
}
