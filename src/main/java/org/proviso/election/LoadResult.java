package org.proviso.election;

import org.proviso.core.ElectionId;

/** What loading came to: the election, and whether it was in the office already and nothing was written. */
public record LoadResult(ElectionId electionId, boolean wasThere) {}
