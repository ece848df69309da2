package org.proviso.core;

/** A stretch of house numbers on a street, on one or both sides, and the precinct part it lies in. */
public record StreetSegment(
        int low, int high, Parity parity, String street, String city, String zip, String precinct, String split) {

    /** Which side of the street. */
    public enum Parity implements Code {
        ODD,
        EVEN,
        BOTH;

        public boolean holds(int houseNumber) {
            return this == BOTH || (houseNumber % 2 == 0) == (this == EVEN);
        }
    }
}
