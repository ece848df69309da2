package org.proviso.core.adjudication.facts;

/** Whether the signature agrees with those on file. */
public enum SignatureComparisonFact implements FactWord {
    NOT_YET("not compared yet"),
    AGREES("a reviewer found that it agrees"),
    VARIANT("differs only in initials, a nickname, or handwriting unsteady from age or illness"),
    DIFFERS_BY_ONE("one reviewer found it different; a second, independent comparison is due"),
    DIFFERS_BY_TWO("two reviewers independently found it different"),
    NO_EXEMPLAR("no signature on file to compare with"),
    CONFIRMED_BY_VOTER("the voter confirmed in time that the signature is theirs");

    private final String meaning;

    SignatureComparisonFact(String meaning) {
        this.meaning = meaning;
    }

    @Override
    public String meaning() {
        return meaning;
    }
}
