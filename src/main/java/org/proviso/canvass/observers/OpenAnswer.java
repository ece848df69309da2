package org.proviso.canvass.observers;

import java.util.List;
import org.proviso.core.adjudication.Answer;
import org.proviso.core.adjudication.Answered;
import org.proviso.core.rules.Given;

/**
 * The answer to one question of the law without its evidence: what stands in the way is a coded reason and can be read by
 * anybody; what is clear or open is said in one word, because the rest may say whose the envelope is.
 */
public record OpenAnswer(String heading, String asks, Kind kind, String words, List<String> references) {

    /** How a question came out. */
    public enum Kind {
        CLEAR("Clear"),
        DEFECT("No"),
        OPEN("Open"),
        NOT_ASKED("Not asked");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    static OpenAnswer of(Answered one) {
        Answer answer = one.answer();
        Kind kind = kind(answer);
        String words = answer instanceof Answer.Defect defect
                ? "Defect: " + defect.reason().words()
                : kind.words();
        return new OpenAnswer(one.question().heading().asks(), one.question().asks(), kind, words, references(answer));
    }

    private static Kind kind(Answer answer) {
        if (answer instanceof Answer.Clear) {
            return Kind.CLEAR;
        }
        if (answer instanceof Answer.Defect) {
            return Kind.DEFECT;
        }
        return answer instanceof Answer.Open ? Kind.OPEN : Kind.NOT_ASKED;
    }

    private static List<String> references(Answer answer) {
        return answer.restsOn().stream()
                .filter(Given::isKnown)
                .map(given -> given.reference().words())
                .distinct()
                .toList();
    }
}
