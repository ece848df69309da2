package org.proviso.status.ui;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import org.proviso.core.ReceiptNumber;

/** What a voter typed. Blanks and dashes do not matter, and a birth date is three numbers. */
record LookUpForm(String receipt, String month, String day, String year) {

    static final LookUpForm EMPTY = new LookUpForm("", "", "", "");

    LookUpForm {
        receipt = receipt.strip();
        month = month.strip();
        day = day.strip();
        year = year.strip();
    }

    /** Empty if what was typed has neither a letter nor a digit, or is too long. */
    Optional<ReceiptNumber> receiptNo() {
        return ReceiptNumber.find(receipt)
                .filter(number -> number.value().codePoints().anyMatch(Character::isLetterOrDigit));
    }

    /** Empty if the three numbers are not a date. */
    Optional<LocalDate> birthDate() {
        try {
            return Optional.of(LocalDate.of(number(year, 4), number(month, 2), number(day, 2)));
        } catch (DateTimeException | NumberFormatException e) {
            return Optional.empty();
        }
    }

    /** Nothing stands in one of the three boxes of the birth date, so there is no date that could be wrong. */
    public boolean dateMissing() {
        return month.isEmpty() || day.isEmpty() || year.isEmpty();
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
