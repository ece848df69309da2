package org.proviso.core.adjudication.facts;

/** Whether the voter met the identification rule. */
public enum IdentificationFact implements FactWord {
    NOT_REQUIRED("the law asks none of this voter"),
    SHOWN("shown when voting"),
    MISSING("asked for, and not shown so far"),
    SUPPLIED_IN_TIME("brought afterward, stamped in time"),
    SUPPLIED_LATE("brought afterward, stamped too late"),
    NOT_SUFFICIENT("brought in time, but not what the law accepts"),
    EXCUSED("excused by a declaration that the law accepts"),
    DECLARATION_PENDING("a declaration was sworn; what must bear it out is not checked yet"),
    DECLARATION_NOT_ACCEPTED("a declaration was sworn that the law does not accept");

    private final String meaning;

    IdentificationFact(String meaning) {
        this.meaning = meaning;
    }

    @Override
    public String meaning() {
        return meaning;
    }
}
