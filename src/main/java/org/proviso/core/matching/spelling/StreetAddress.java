package org.proviso.core.matching.spelling;

/**
 * An address line taken apart: house number (0 when there is none), the letter or fraction that follows it, the street
 * in one spelling, the unit with its standard abbreviation. A part that was not given is empty.
 */
public record StreetAddress(int houseNumber, String houseLetter, String street, String unit) {

    private static final int LONG_NAME = 8;

    /** The unit without the word for it, so that Apt 3-B, Unit 3 B and #3B are one; the house letter where no unit is. */
    public String door() {
        String value = unit.isEmpty() ? houseLetter : unit.substring(unit.indexOf(' ') + 1);
        return value.replace(" ", "").replace("-", "");
    }

    /** Whether this may be a misspelling of the other: the same house, a street one letter away, two in a long name. */
    public boolean isOneSlipFrom(StreetAddress other) {
        boolean numbered = (street + other.street).chars().anyMatch(Character::isDigit);
        int letters = Math.min(street.length(), other.street.length());
        return houseNumber != 0
                && houseNumber == other.houseNumber
                && !numbered
                && EditDistance.optimalStringAlignment(street, other.street) <= (letters < LONG_NAME ? 1 : 2);
    }
}
