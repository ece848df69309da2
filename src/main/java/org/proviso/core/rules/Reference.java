package org.proviso.core.rules;

/** Where a rule is written: title, section and the year of the edition read. */
public record Reference(String title, String section, int year) {

    /** As it stands beside an answer: {@code 52 USC 21083(b) (2023)}. */
    public String words() {
        String place = section.isEmpty() ? title : title + " " + section;
        return year == 0 ? place : place + " (" + year + ")";
    }
}
