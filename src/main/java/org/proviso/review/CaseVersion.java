package org.proviso.review;

/** A case in the version in which a person saw it. */
public record CaseVersion(CaseKey key, int version) {}
