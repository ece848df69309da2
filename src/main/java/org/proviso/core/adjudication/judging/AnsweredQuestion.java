package org.proviso.core.adjudication.judging;

import java.util.List;
import org.proviso.core.adjudication.finding.Evidence;
import org.proviso.core.adjudication.questions.Answer;
import org.proviso.core.adjudication.questions.Question;

/** A question with its answer and the evidence for it. */
public record AnsweredQuestion(Question question, Answer answer, List<Evidence> evidence) {}
