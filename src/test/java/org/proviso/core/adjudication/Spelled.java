package org.proviso.core.adjudication;

import org.proviso.core.adjudication.questions.Answer;

/** An answer in the few words in which the test tables spell it. */
public final class Spelled {

    private Spelled() {}

    /** {@code clear}, {@code not asked}, {@code open}, {@code open; expected reject not_registered}. */
    public static String of(Answer answer) {
        if (answer instanceof Answer.Defect defect) {
            String clock = defect.ask() == null ? "" : ", " + defect.ask().code();
            return defect.consequence().spelled() + clock + ": "
                    + defect.reason().code();
        }
        if (answer instanceof Answer.Open open) {
            return open.expected() == null ? "open" : "open; expected " + of(open.expected());
        }
        return answer instanceof Answer.Clear ? "clear" : "not asked";
    }
}
