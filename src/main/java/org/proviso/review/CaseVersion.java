package org.proviso.review;

import org.proviso.core.EnvelopeKey;

/** A case in the version in which a person saw it. */
public record CaseVersion(EnvelopeKey key, int version) {}
