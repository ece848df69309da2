package org.proviso.core.adjudication.facts;

/** What is known against the voter's right to vote. */
public enum EligibilityFact implements FactWord {
    NOTHING_KNOWN("nothing is known against it"),
    NOT_OF_AGE("under age on election day"),
    NOT_A_CITIZEN("not a citizen, by clear record"),
    DISQUALIFIED("disqualified by law on election day"),
    DOUBTED("doubted; nobody has weighed the evidence yet"),
    DOUBT_NOT_SHOWN("doubted, and the evidence does not bear the doubt out"),
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
