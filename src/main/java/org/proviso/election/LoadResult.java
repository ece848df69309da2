package org.proviso.election;

import org.proviso.core.ElectionId;

/**
 * What loading came to: the election, whether it was in the office already and nothing was written, and whether it waits
 * for a second person, as more rows are left out than one may.
 */
public record LoadResult(ElectionId electionId, boolean wasThere, boolean waits) {

    public LoadResult(ElectionId electionId, boolean wasThere) {
        this(electionId, wasThere, false);
    }
}
