package org.proviso.core.adjudication.questions;

import org.proviso.core.Code;

/** The eight things that the law asks of an envelope, in the order of the trade. */
public enum QuestionHeading implements Code {
    ENVELOPE("Is the envelope in order?"),
    VOTER("Who is this voter?"),
    REGISTRATION("Registered in time?"),
    ALREADY_VOTED("Already voted?"),
    BALLOT("Right place and ballot?"),
    IDENTIFICATION("Identification?"),
    SIGNATURE("Does the signature agree?"),
    ANYTHING_ELSE("Anything else?");

    private final String asks;

    QuestionHeading(String asks) {
        this.asks = asks;
    }

    public String asks() {
        return asks;
    }

    /** From 1 to 8. */
    public int number() {
        return ordinal() + 1;
    }
}
