package org.proviso.review.assess;

import java.util.List;
import org.proviso.core.rules.Given;

/** A value on which the office must rule, what to ask counsel, and the envelopes that wait for it. */
public record RulingTask(Given given, String question, List<String> envelopeNos) {}
