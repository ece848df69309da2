package org.proviso.review;

import java.util.Optional;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.adjudication.CaseReport;
import org.proviso.core.rules.ResolvedPack;

/**
 * A case moved on, or the rules say something new about it: where it stands, what they say, which rules they are, and the
 * decision that stands. Later rooms hear of it in the same transaction.
 */
public record CaseChanged(
        EnvelopeKey key, CaseState state, CaseReport report, ResolvedPack pack, Optional<Decision> decision) {}
