package org.proviso.core;

import java.util.Set;

/** A ballot style: a set of contests, in a primary for one party (empty where it is for all). */
public record BallotStyle(String style, String party, Set<String> contestIds) {}
