package org.proviso.core.adjudication.kept;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.proviso.core.Code;
import org.proviso.core.adjudication.judging.AnsweredQuestion;
import org.proviso.core.adjudication.judging.Assessment;
import org.proviso.core.adjudication.judging.AssessmentOutcome;
import org.proviso.core.adjudication.judging.DueAsk;
import org.proviso.core.adjudication.questions.Answer;
import org.proviso.core.calendar.Deadline;
import org.proviso.core.chain.CanonicalJson;
import org.proviso.core.rules.ResolvedRule;

/**
 * The whole of an assessment as canonical JSON: what it was made from, the answer to every question with the rules it
 * rests on, what they fold into, and what the voter may still bring. The evidence stands with the facts.
 */
final class AssessmentJson {

    private AssessmentJson() {}

    /** {@code madeFrom} ties the text to its facts, its rules, its moment and the version of the engine. */
    static String write(Assessment assessment, Map<String, Object> madeFrom) {
        Map<String, Object> text = new HashMap<>();
        text.put("made_from", madeFrom);
        text.put(
                "answers",
                assessment.answered().stream().map(AssessmentJson::answered).toList());
        text.put("outcome", outcome(assessment.outcome()));
        text.put("asks", assessment.asks().stream().map(AssessmentJson::ask).toList());
        text.put("held_apart", assessment.heldApart());
        return CanonicalJson.of(text);
    }

    private static Map<String, Object> answered(AnsweredQuestion answeredQuestion) {
        Map<String, Object> text = answer(answeredQuestion.answer());
        text.put("question", answeredQuestion.question().key());
        return text;
    }

    private static Map<String, Object> answer(Answer answer) {
        Map<String, Object> text = new HashMap<>();
        text.put("words", answer.words());
        text.put("rests_on", answer.restsOn().stream().map(AssessmentJson::rule).toList());
        if (answer instanceof Answer.Clear) {
            text.put("answer", "clear");
        } else if (answer instanceof Answer.Defect defect) {
            defect(defect, text);
        } else if (answer instanceof Answer.Open open) {
            text.put("answer", "open");
            if (open.expected() != null) {
                text.put("expected", answer(open.expected()));
            }
        } else {
            text.put("answer", "not_asked");
        }
        return text;
    }

    private static void defect(Answer.Defect defect, Map<String, Object> text) {
        text.put("answer", "defect");
        text.put("reason", defect.reason().code());
        text.put("consequence", defect.consequence().spelled());
        if (defect.ask() != null) {
            text.put("ask_clock", defect.ask().code());
        }
    }

    private static Map<String, Object> rule(ResolvedRule given) {
        return Map.of(
                "rule", given.rule().key(),
                "value", given.value().spelled(),
                "reference", given.reference().words(),
                "basis", given.basis().code());
    }

    private static Map<String, Object> outcome(AssessmentOutcome outcome) {
        return Map.of(
                "recommendation",
                outcome.recommendation().code(),
                "reasons",
                outcome.reasons().stream().map(Code::code).toList(),
                "contests",
                List.copyOf(outcome.contests()));
    }

    private static Map<String, Object> ask(DueAsk ask) {
        Map<String, Object> text = new HashMap<>();
        text.put("ask", ask.ask().code());
        text.put("reason", ask.reason().code());
        text.put("clock", ask.clock().code());
        ask.deadline().ifPresent(deadline -> text.put("deadline", deadline(deadline)));
        return text;
    }

    private static Map<String, Object> deadline(Deadline deadline) {
        return Map.of(
                "day", deadline.day().toString(),
                "last_moment", deadline.lastMoment().toString(),
                "counted", deadline.counted().toString());
    }
}
