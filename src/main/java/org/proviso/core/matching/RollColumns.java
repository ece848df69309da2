package org.proviso.core.matching;

/**
 * The roll's fields as rows of numbers, one place for each voter: numbers of names and streets in their dictionaries,
 * birth dates as yyyymmdd, 0 where nothing is known (-1 for the last four digits).
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
        short[] last4,
        int[] license) {

    int size() {
        return surname.length;
    }
}
