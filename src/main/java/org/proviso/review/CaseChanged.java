package org.proviso.review;

import java.util.Optional;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.adjudication.CaseReport;

/**
 * A case moved on, or the rules say something new about it: where it stands, what they say, and the decision that
 * stands. Later rooms hear of it in the same transaction.
 */
public record CaseChanged(EnvelopeKey key, CaseState state, CaseReport report, Optional<Decision> decision) {}
