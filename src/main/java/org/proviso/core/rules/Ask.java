package org.proviso.core.rules;

import org.proviso.core.Code;

/** What a voter may still bring or do after election day. */
public enum Ask implements Code {
    IDENTIFICATION("bring or send identification"),
    SIGNATURE("sign the affirmation"),
    SIGNATURE_DIFFERENCE("confirm that the signature is theirs"),
    AFFIRMATION("complete the affirmation"),
    REGISTRATION("complete the registration"),
    ELIGIBILITY("bring proof of the right to vote");

    private final String words;

    Ask(String words) {
        this.words = words;
    }

    /** What is asked of the voter, as it reads after "the voter may". */
    public String words() {
        return words;
    }
}
