package org.proviso.core.adjudication.proof;

import org.proviso.core.adjudication.questions.Answer;
import org.proviso.core.rules.Consequence;

/**
 * What the fold sees of an answer: clear, not asked, open, or a defect by what it does, under which policy, and
 * whether an ask still runs. Answers of one class fold alike; {@code sample} stands for all of them.
 */
record AnswerClass(String name, Answer sample) {

    static AnswerClass of(Answer answer) {
        if (answer instanceof Answer.Open) {
            return new AnswerClass("open", answer);
        }
        if (answer instanceof Answer.Defect defect) {
            Consequence consequence = defect.consequence();
            String policy = consequence.policy() == null
                    ? ""
                    : " " + consequence.policy().code();
            String runs = consequence.costsTheVoter() && !defect.isFinal() ? ", ask running" : "";
            return new AnswerClass(consequence.does().code() + policy + runs, answer);
        }
        return new AnswerClass("clear", answer);
    }

    /** With this among the answers no ballot counts, whole or in part. */
    boolean blocksCounting() {
        if (sample instanceof Answer.Defect defect) {
            Consequence.Effect does = defect.consequence().does();
            return (does != Consequence.Effect.NONE && does != Consequence.Effect.IN_PART) || !isSettled(defect);
        }
        return isOpen();
    }

    /** Something stands in the way or is open; only then may it be missing from a better case. */
    boolean isDefect() {
        return sample instanceof Answer.Defect;
    }

    boolean isOpen() {
        return sample instanceof Answer.Open;
    }

    private static boolean isSettled(Answer.Defect defect) {
        return !defect.consequence().costsTheVoter() || defect.isFinal();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof AnswerClass that && that.name.equals(name);
    }

    @Override
    public int hashCode() {
        return name.hashCode();
    }
}
