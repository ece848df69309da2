package org.proviso.core.matching;

/**
 * The roll's fields as rows of numbers, one place for each voter: numbers of names and streets in their dictionaries,
 * birth dates and last four as spread digits, 0 where nothing is known.
 */
record RollColumns(
        int[] surname,
        int[] former,
        int[] given,
        int[] middle,
        byte[] suffix,
        int[] birth,
        int[] house,
        int[] street,
        int[] door,
        int[] zip,
        char[] last4,
        int[] license) {

    int size() {
        return surname.length;
    }
}
