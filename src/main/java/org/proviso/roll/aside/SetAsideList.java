package org.proviso.roll.aside;

import org.jspecify.annotations.Nullable;

/**
 * The rows of a list that are set aside: how many and their hash, and who decided why to use the list without them (null
 * where nobody did yet). The hash tells two readings of a file under one number apart.
 */
public record SetAsideList(
        int rowsAside,
        String rowsHash,
        @Nullable String because,
        @Nullable String decidedBy) {

    /** Of a list all of whose rows were read. */
    public static final SetAsideList NONE = new SetAsideList(0, "", null, null);

    public boolean isEmpty() {
        return rowsAside == 0;
    }

    /** Whether the list may be put in use as far as these rows go. */
    public boolean isSettled() {
        return isEmpty() || decidedBy != null;
    }
}
