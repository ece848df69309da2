package org.proviso.intake.ui;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.proviso.core.CheckedReceipt;
import org.proviso.core.Election;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.ReceiptNumber;
import org.proviso.intake.NumberWords;
import org.proviso.intake.ReceivingService;
import org.proviso.intake.desk.EnvelopeListService;
import org.proviso.ui.field.TypedField;

/**
 * The two numbers printed on an envelope. Where one is on another envelope too, or there is no receipt number, the clerk
 * says so and the envelope comes in marked.
 */
final class ReceivedNumbers {

    private static final String LETTERS_AND_DIGITS = "Use letters, digits and hyphens only.";
    private static final String NUMBER = "[0-9A-Za-z][0-9A-Za-z-]{0,59}";
    private static final String RECEIPT = "[0-9A-Z][0-9A-Z-]{0,59}";
    private static final int DISTINCT = 99;

    private final ReceivingService receiving;
    private final EnvelopeListService lists;
    private final ElectionId election;
    private final boolean checkDigit;
    private final TypedField number = new TypedField("envelope", "Envelope number");
    private final TypedField receipt = new TypedField("receipt", "Receipt number");
    private @Nullable EnvelopeNumber alsoOn;

    ReceivedNumbers(ReceivingService receiving, EnvelopeListService lists, Election election) {
        this.receiving = receiving;
        this.lists = lists;
        this.election = election.id();
        this.checkDigit = election.receipts() == Election.Receipts.CHECK_DIGIT;
        number.onLeave(this::checkNumber);
        receipt.onLeave(() -> checkReceipt(false));
    }

    TypedField number() {
        return number;
    }

    TypedField receipt() {
        return receipt;
    }

    /** The envelope that has the number printed on this one; null where this one has it alone. */
    @Nullable
    EnvelopeNumber alsoOn() {
        return alsoOn;
    }

    /** The receipt number; null where none is printed. */
    @Nullable
    ReceiptNumber receiptNo() {
        return ReceiptNumber.orNull(receipt.text());
    }

    boolean sharesReceipt() {
        return !receipt.text().isEmpty() && receipt.isKept();
    }

    /** For the next envelope. */
    void clear() {
        alsoOn = null;
        for (TypedField field : List.of(number, receipt)) {
            field.text("");
            field.problem("");
            field.question("");
        }
    }

    /** Checks both for good: what is missing is said too. */
    void check() {
        checkNumber();
        if (number.text().isEmpty()) {
            number.problem("Required.");
        }
        checkReceipt(true);
    }

    private void checkNumber() {
        spellNumber();
        String text = number.text();
        number.problem(text.isEmpty() || text.matches(NUMBER) ? "" : LETTERS_AND_DIGITS);
        Optional<EnvelopeNumber> taken = number.hasProblem()
                ? Optional.empty()
                : EnvelopeNumber.find(text)
                        .filter(typed -> lists.line(election, typed).isPresent());
        if (taken.isPresent()) {
            askAboutSecond(taken.get());
        } else if (alsoOn != null && text.startsWith(alsoOn + "-")) {
            number.mark(also(alsoOn));
        } else {
            alsoOn = null;
            number.question("");
        }
    }

    /** Numbers are printed in capitals; one that the loaded files have in small letters is meant as it stands there. */
    private void spellNumber() {
        String capitals = number.text().toUpperCase(Locale.ROOT);
        if (!number.text().equals(capitals) && !isReceived(number.text())) {
            number.text(capitals);
        }
    }

    private boolean isReceived(String text) {
        return EnvelopeNumber.find(text)
                .filter(typed -> lists.line(election, typed).isPresent())
                .isPresent();
    }

    private void askAboutSecond(EnvelopeNumber taken) {
        alsoOn = null;
        Optional<String> distinct = IntStream.rangeClosed(2, DISTINCT)
                .mapToObj(copy -> taken + "-" + copy)
                .filter(text -> EnvelopeNumber.find(text)
                        .filter(free -> lists.line(election, free).isEmpty())
                        .isPresent())
                .findFirst();
        String already = "Envelope " + taken + " has already been received.";
        if (distinct.isEmpty()) {
            number.problem(already);
            return;
        }
        number.question(
                already + " If this is another envelope with the same number, receive it as " + distinct.get()
                        + ", and write that on it.",
                "Receive as " + distinct.get(),
                "",
                () -> {
                    alsoOn = taken;
                    number.text(distinct.get());
                    number.mark(also(taken));
                });
    }

    private static String also(EnvelopeNumber other) {
        return "Number also on " + other + ".";
    }

    /** The office's own numbers have no check digit. That none is printed is asked at the end only. */
    private void checkReceipt(boolean atTheEnd) {
        receipt.text(receipt.text().strip().toUpperCase(Locale.ROOT));
        receipt.problem("");
        if (receipt.text().isEmpty()) {
            checkNone(atTheEnd);
            return;
        }
        if (checkDigit) {
            CheckedReceipt.find(receipt.text()).ifPresent(right -> receipt.text(right.value()));
            CheckedReceipt.slip(receipt.text())
                    .ifPresent(slip -> receipt.problem("The receipt number " + slip.words() + "."));
        }
        if (!receipt.hasProblem() && !receipt.text().matches(RECEIPT)) {
            receipt.problem(LETTERS_AND_DIGITS);
        }
        List<String> others =
                receipt.hasProblem() ? List.of() : receiving.withReceipt(election, new ReceiptNumber(receipt.text()));
        if (others.isEmpty()) {
            receipt.question("");
        } else {
            receipt.question(
                    "This receipt number is also on " + NumberWords.listed(others) + ". Is it right?",
                    "Keep it",
                    "Receipt number also on " + NumberWords.listed(others) + ".",
                    () -> {});
        }
    }

    private void checkNone(boolean atTheEnd) {
        if (atTheEnd) {
            receipt.question(
                    "Required. If none is printed on the envelope, receive it without.",
                    "No receipt number",
                    "No receipt number.",
                    () -> {});
        } else if (!receipt.isKept() && !receipt.isAskingAboutText()) {
            receipt.question("");
        }
    }
}
