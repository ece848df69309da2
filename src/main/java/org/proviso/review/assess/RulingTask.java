package org.proviso.review.assess;

import java.util.List;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.rules.ResolvedRule;

/** A value on which the office must rule, what to ask counsel, and the envelopes that wait for it. */
public record RulingTask(ResolvedRule given, String question, List<EnvelopeNumber> envelopeNos) {}
