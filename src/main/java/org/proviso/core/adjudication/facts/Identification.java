package org.proviso.core.adjudication.facts;

/** Whether the voter met the identification rule. */
public enum Identification implements FactWord {
    NOT_REQUIRED("the law asks none of this voter"),
    SHOWN("shown when voting"),
    MISSING("asked for, and not shown so far"),
    SUPPLIED_IN_TIME("brought afterward, stamped in time"),
    SUPPLIED_LATE("brought afterward, stamped too late"),
    EXCUSED("excused by a declaration that the law accepts");

    private final String meaning;

    Identification(String meaning) {
        this.meaning = meaning;
    }

    @Override
    public String meaning() {
        return meaning;
    }
}
