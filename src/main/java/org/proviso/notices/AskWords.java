package org.proviso.notices;

import org.proviso.core.rules.Ask;
import org.proviso.core.rules.Reason;

/** What a cure notice says of an ask: what is missing, and what to bring or sign. Written for grade 6 to 8. */
record AskWords(String missing, String toDo) {

    static AskWords of(Ask ask, Reason reason) {
        return switch (ask) {
            case IDENTIFICATION ->
                new AskWords(
                        "You did not show identification when you voted.",
                        "Bring us identification that the law accepts, or send us a copy. Call us if you are"
                                + " not sure which kinds we can accept.");
            case SIGNATURE -> new AskWords(signature(reason), "Sign the statement on your envelope at our office.");
            case SIGNATURE_DIFFERENCE ->
                new AskWords(
                        "The signature on your envelope does not look like the one we have on file.",
                        "Tell us in a signed letter whether you signed the envelope yourself.");
            case AFFIRMATION ->
                new AskWords(
                        "The statement on your envelope is missing something we need to know who you are.",
                        "Call us to ask what is missing. Then fill it in at our office, or send it to us in writing.");
            case REGISTRATION ->
                new AskWords(
                        "Your voter registration is not finished.",
                        "Call us to ask what your registration still needs. Then bring it to us, or send it.");
            case ELIGIBILITY ->
                new AskWords(
                        "We do not have everything we need to show that you had the right to vote.",
                        "Bring us proof of your right to vote, or send us a copy. Call us to ask what we can accept.");
        };
    }

    private static String signature(Reason reason) {
        return reason == Reason.MARK_NOT_WITNESSED
                ? "You signed your envelope with a mark, and no witness signed beside it."
                : "You did not sign the statement on your ballot envelope.";
    }
}
