package org.proviso.core.adjudication.facts;

/** Whether the signature agrees with those on file. */
public enum SignatureComparisonFact implements FactWord {
    NOT_YET("nobody has compared it yet"),
    AGREES("a reviewer found that it agrees"),
    VARIANT("differs only by initials, a nickname, or a hand unsteady with age or illness"),
    DIFFERS_BY_ONE("one reviewer found it different; a second, independent look is due"),
    DIFFERS_BY_TWO("two reviewers independently found it different"),
    NO_EXEMPLAR("there is no signature on file to compare with"),
    CONFIRMED_BY_VOTER("the voter confirmed in time that it is theirs");

    private final String meaning;

    SignatureComparisonFact(String meaning) {
        this.meaning = meaning;
    }

    @Override
    public String meaning() {
        return meaning;
    }
}
