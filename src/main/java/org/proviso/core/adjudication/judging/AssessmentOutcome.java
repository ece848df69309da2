package org.proviso.core.adjudication.judging;

import java.util.List;
import java.util.Set;
import org.proviso.core.rules.Reason;

/**
 * What the answers fold into: the recommendation, all reasons known with the first one primary, and the contests that
 * count where only a part does.
 */
public record AssessmentOutcome(Recommendation recommendation, List<Reason> reasons, Set<String> contests) {}
