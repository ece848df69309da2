package org.proviso.core.adjudication.facts;

/** Whether the voter met the identification rule. */
public enum IdentificationFact implements FactWord {
    NOT_REQUIRED("the law requires none from this voter"),
    SHOWN("shown at the voting location"),
    MISSING("required, and not shown so far"),
    SUPPLIED_IN_TIME("provided after voting, stamped in time"),
    SUPPLIED_LATE("provided after voting, stamped too late"),
    NOT_SUFFICIENT("provided in time, but not a kind the law accepts"),
    EXCUSED("excused by a declaration the law accepts"),
    DECLARATION_PENDING("a declaration was sworn; its supporting evidence is not checked yet"),
    DECLARATION_NOT_ACCEPTED("a declaration was sworn, but the law does not accept it");

    private final String meaning;

    IdentificationFact(String meaning) {
        this.meaning = meaning;
    }

    @Override
    public String meaning() {
        return meaning;
    }
}
