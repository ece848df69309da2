package org.proviso.election;

/** What loading came to: the election, and whether it was in the office already and nothing was written. */
public record LoadResult(String electionId, boolean wasThere) {}
