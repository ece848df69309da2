package org.proviso.core;

/**
 * A precinct, or one split of it, with the ballot style its voters get; in a primary one row for each party. An
 * unsplit precinct has an empty split.
 */
public record PrecinctPart(String precinct, String split, String ballotStyle, String party, String votingLocation) {}
