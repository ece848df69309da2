package org.proviso.canvass.observers;

import java.util.List;
import org.proviso.core.adjudication.judging.AnsweredQuestion;
import org.proviso.core.adjudication.questions.Answer;
import org.proviso.core.rules.ResolvedRule;

/**
 * The answer to one question of the law without its evidence: what stands in the way is a coded reason and can be read by
 * anybody; what is clear or open is said in one word, because the rest may say whose the envelope is.
 */
public record ObserverAnswer(String heading, String asks, Result kind, String words, List<String> references) {

    /** The answer to a question. */
    public enum Result {
        CLEAR("Clear"),
        DEFECT("No"),
        OPEN("Open"),
        NOT_ASKED("Not asked");

        private final String words;

        Result(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    static ObserverAnswer of(AnsweredQuestion answeredQuestion) {
        Answer answer = answeredQuestion.answer();
        Result kind = kind(answer);
        String words = answer instanceof Answer.Defect defect
                ? "Defect: " + defect.reason().words()
                : kind.words();
        return new ObserverAnswer(
                answeredQuestion.question().heading().asks(),
                answeredQuestion.question().asks(),
                kind,
                words,
                references(answer));
    }

    private static Result kind(Answer answer) {
        if (answer instanceof Answer.Clear) {
            return Result.CLEAR;
        }
        if (answer instanceof Answer.Defect) {
            return Result.DEFECT;
        }
        return answer instanceof Answer.Open ? Result.OPEN : Result.NOT_ASKED;
    }

    private static List<String> references(Answer answer) {
        return answer.restsOn().stream()
                .filter(ResolvedRule::isKnown)
                .map(given -> given.reference().words())
                .distinct()
                .toList();
    }
}
