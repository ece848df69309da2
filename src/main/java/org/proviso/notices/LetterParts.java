package org.proviso.notices;

import java.time.LocalDateTime;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.proviso.core.Election;
import org.proviso.core.ReceiptNumber;
import org.proviso.core.adjudication.finding.DateWords;

/** What every letter has in common. */
final class LetterParts {

    static final String HELP =
            "This is free. Call us if you need help, another language, large print or another format.";

    private LetterParts() {}

    static List<String> from(Election election) {
        Election.Office office = election.office();
        return Stream.of(office.name(), office.address(), office.phone(), office.email())
                .filter(part -> !part.isBlank())
                .toList();
    }

    /** Which election and which envelope: the voter's receipt number says it, where the envelope has one. */
    static String about(Election election, @Nullable ReceiptNumber receiptNo) {
        return election.name() + ", " + DateWords.longDate(election.date()) + "."
                + (receiptNo == null ? "" : " Your receipt number: " + receiptNo + ".");
    }

    static String office(Election election) {
        return election.office().name() + ", " + election.office().address();
    }

    /** {@code Tuesday, November 10, 2026, at 5:00 pm}. */
    static String moment(LocalDateTime moment) {
        return DateWords.longDate(moment.toLocalDate()) + ", at " + DateWords.hour(moment);
    }

    /** Where to hear whether the board's meeting was called, or moved. */
    static String callForTheDate(Election election) {
        String phone = election.office().phone();
        return "The date can change. Call us before you come" + (phone.isBlank() ? "" : ": " + phone) + ".";
    }

    static String objections(Election election) {
        String ways = Stream.of(election.office().phone(), election.office().email())
                .filter(way -> !way.isBlank())
                .collect(Collectors.joining(" or "));
        return "If you think we are wrong, tell us: " + (ways.isEmpty() ? office(election) : ways) + ".";
    }
}
