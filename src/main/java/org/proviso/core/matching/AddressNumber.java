package org.proviso.core.matching;

/** The roll keeps house number and unit in boxes of their own: reads both without a street. */
final class AddressNumber {

    private AddressNumber() {}

    /** The plain case, digits alone and no unit, is read at once: a roll has a million of them. */
    static StreetAddress of(String houseNumber, String unit) {
        if (unit.isEmpty() && isShortNumber(houseNumber)) {
            return new StreetAddress(Integer.parseInt(houseNumber), "", "", "");
        }
        return AddressNormalizer.parse(houseNumber, unit);
    }

    private static boolean isShortNumber(String text) {
        return !text.isEmpty() && text.length() < 9 && text.chars().allMatch(c -> c >= '0' && c <= '9');
    }
}
