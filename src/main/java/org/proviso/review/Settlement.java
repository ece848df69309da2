package org.proviso.review;

import java.util.Set;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.core.deciding.Grounds;

/**
 * How the decider settles one case: in the version it was seen in, with the grounds, and, where a part counts otherwise
 * than recommended, the contests that count (empty: as recommended).
 */
public record Settlement(EnvelopeKey key, int version, DecisionOutcome as, Grounds grounds, Set<String> contests) {}
