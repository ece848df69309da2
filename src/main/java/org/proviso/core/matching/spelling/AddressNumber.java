package org.proviso.core.matching.spelling;

/** The roll has separate columns for house number and unit: reads both without a street. */
public final class AddressNumber {

    private AddressNumber() {}

    /** The plain case, digits alone, is read at once: a roll has a million of them. */
    public static StreetAddress of(String houseNumber) {
        return isShortNumber(houseNumber)
                ? new StreetAddress(Integer.parseInt(houseNumber), "", "", "")
                : AddressNormalizer.parse(houseNumber, "");
    }

    /** The door a unit names. */
    public static String door(String unit) {
        return new StreetAddress(0, "", "", AddressNormalizer.unit(unit)).door();
    }

    private static boolean isShortNumber(String text) {
        return !text.isEmpty() && text.length() < 9 && Digits.only(text);
    }
}
