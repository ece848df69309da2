package org.proviso.core.adjudication.facts;

/** What is known against the voter's right to vote. */
public enum EligibilityFact implements FactWord {
    NOTHING_KNOWN("nothing on record against eligibility"),
    NOT_OF_AGE("under 18 on election day"),
    NOT_A_CITIZEN("a clear record shows the voter is not a citizen"),
    DISQUALIFIED("legally disqualified on election day"),
    DOUBTED("in doubt; the evidence has not been weighed yet"),
    DOUBT_NOT_SHOWN("in doubt, but the evidence does not support the doubt"),
    NOT_ENTITLED("the evidence shows that the voter was not entitled to vote"),
    DIED_BEFORE_VOTING("died before the ballot was cast"),
    DIED_AFTER_VOTING("died after the ballot was cast");

    private final String meaning;

    EligibilityFact(String meaning) {
        this.meaning = meaning;
    }

    @Override
    public String meaning() {
        return meaning;
    }
}
