package org.proviso.ui;

import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.proviso.core.ElectionId;

/** Reads a list as it stands at one moment, whatever people do meanwhile. The election room supplies it. */
public interface ListMoments {

    /** Reads a list of an election, or (null) of the office, and says which moment it was. */
    void read(@Nullable ElectionId electionId, Consumer<ListMoment> list);

    /**
     * The moment of a list.
     *
     * @param election the election's name
     * @param listedAt {@code 2026-11-05 14:30}, the county's time
     * @param ledgerHead the number and the hash of the last entry
     */
    record ListMoment(String election, String listedAt, String ledgerHead) {}
}
