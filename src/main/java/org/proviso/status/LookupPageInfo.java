package org.proviso.status;

import java.util.Optional;
import org.proviso.core.CheckedReceipt;
import org.proviso.core.CheckedReceipt.Problem;
import org.proviso.core.Election;
import org.proviso.core.ReceiptNumber;

/**
 * What the page says before anybody looked up: whom to call, by the newest election, and whether the receipts of that
 * one, and of every election ({@code always}), have a check digit. A keyboard of digits only is for the latter: it has
 * no letters for the receipt of an earlier election.
 */
public record LookupPageInfo(Election.Office office, String electionName, boolean checkDigit, boolean always) {

    /**
     * What is wrong with a number that was typed, from the number alone; empty where receipts are not checked, and for
     * one that is no row of digits: it may be from an earlier election.
     */
    Optional<Problem> slip(ReceiptNumber typed) {
        return checkDigit
                ? CheckedReceipt.slip(typed.value()).filter(slip -> slip != Problem.NOT_ONLY_DIGITS)
                : Optional.empty();
    }
}
