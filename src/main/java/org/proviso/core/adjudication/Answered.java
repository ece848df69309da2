package org.proviso.core.adjudication;

import java.util.List;

/** A question with its answer and the evidence for it. */
public record Answered(Question question, Answer answer, List<Evidence> evidence) {}
