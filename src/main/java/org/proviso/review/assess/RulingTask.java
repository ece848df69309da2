package org.proviso.review.assess;

import java.util.List;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.rules.ResolvedRule;

/** A value to ask counsel about: what to ask, how many envelopes wait for it, and the first of them. */
public record RulingTask(ResolvedRule given, String question, int waiting, List<EnvelopeNumber> first) {}
