package org.proviso.review.assess;

import org.proviso.core.EnvelopeKey;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.review.CaseState;

/** A settled case whose last assessment was made under other rules than those in force now; it keeps them. */
public record StaleCase(EnvelopeKey key, CaseState state, Recommendation said, String packHash) {}
