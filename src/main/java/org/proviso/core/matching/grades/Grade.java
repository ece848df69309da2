package org.proviso.core.matching.grades;

/** How one field of an envelope compares with one field of a roll record. */
public interface Grade {

    GradeFrequencies shares();

    /** One sentence for the office, or an empty text when the field says nothing. */
    String words();
}
