package org.proviso.review;

import org.proviso.core.adjudication.Recommendation;

/** A settled case whose last assessment was made under other rules than those in force now; it keeps them. */
public record StaleCase(CaseKey key, CaseState state, Recommendation said, String packHash) {}
