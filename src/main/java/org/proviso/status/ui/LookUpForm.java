package org.proviso.status.ui;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;

/** What a voter typed. Blanks and dashes do not matter, and a birth date is three numbers. */
record LookUpForm(String receipt, String month, String day, String year) {

    private static final int LONGEST_RECEIPT = 60;

    static final LookUpForm EMPTY = new LookUpForm("", "", "", "");

    LookUpForm {
        receipt = receipt.strip();
        month = month.strip();
        day = day.strip();
        year = year.strip();
    }

    boolean hasReceipt() {
        return receipt.codePoints().anyMatch(Character::isLetterOrDigit) && receipt.length() <= LONGEST_RECEIPT;
    }

    /** Empty if the three numbers are not a date. */
    Optional<LocalDate> birthDate() {
        try {
            return Optional.of(LocalDate.of(number(year, 4), number(month, 2), number(day, 2)));
        } catch (DateTimeException | NumberFormatException e) {
            return Optional.empty();
        }
    }

    private static int number(String digits, int most) {
        if (digits.isEmpty()
                || digits.length() > most
                || !digits.chars().allMatch(digit -> digit >= '0' && digit <= '9')) {
            throw new NumberFormatException("not a number of a date");
        }
        return Integer.parseInt(digits);
    }
}
