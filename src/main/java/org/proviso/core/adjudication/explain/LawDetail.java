package org.proviso.core.adjudication.explain;

import java.util.List;
import org.proviso.core.adjudication.judging.AnsweredQuestion;

/**
 * An answer that stands in the way or is open, as it is unfolded: the question where it is another than the heading's,
 * with the answer; what the records suggest (empty where they suggest nothing); the evidence; the rules.
 */
public record LawDetail(
        AnsweredQuestion answered, String words, String suggests, List<String> evidence, List<String> references) {}
