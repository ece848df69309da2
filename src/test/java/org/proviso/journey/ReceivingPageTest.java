package org.proviso.journey;

import static com.github.mvysny.kaributesting.v10.LocatorJ._get;
import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.journey.Office.as;
import static org.proviso.journey.PageDriver.asked;
import static org.proviso.journey.PageDriver.choose;
import static org.proviso.journey.PageDriver.chosen;
import static org.proviso.journey.PageDriver.fill;
import static org.proviso.journey.PageDriver.leave;
import static org.proviso.journey.PageDriver.marked;
import static org.proviso.journey.PageDriver.press;
import static org.proviso.journey.PageDriver.said;
import static org.proviso.journey.PageDriver.text;
import static org.proviso.journey.PageDriver.type;
import static org.proviso.journey.PageDriver.typeAndLeave;
import static org.proviso.journey.PageDriver.wrong;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.proviso.core.CheckedReceipt;
import org.proviso.core.Envelope;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.ReceiptNumber;
import org.proviso.core.YesNo;
import org.proviso.intake.IntakeService;
import org.proviso.intake.numbers.MarkedEnvelope;
import org.proviso.intake.numbers.NumberCheckService;
import org.proviso.ui.MessageLine;
import org.proviso.ui.field.ActButton;
import org.springframework.beans.factory.annotation.Autowired;

/** The clerk takes envelopes out of a bag with ReceiveForm, and settles numbers with ConfirmNumberSheet and CorrectReceiptSheet. */
@OnPages
class ReceivingPageTest {

    private static final String PLACE = "Depot Street Library";

    @Autowired
    private PageDriver pages;

    private static Envelope envelope(String number) {
        return PagesOffice.the(IntakeService.class)
                .envelope(PagesOffice.ELECTION, new EnvelopeNumber(number))
                .orElseThrow();
    }

    private static boolean isReceived(String number) {
        return PagesOffice.the(IntakeService.class)
                .envelope(PagesOffice.ELECTION, new EnvelopeNumber(number))
                .isPresent();
    }

    private static void numbers(String number, String receipt) {
        type("place", PLACE);
        type("envelope", number);
        type("receipt", receipt);
    }

    private static List<String> marks(String number) {
        return as("jon", () -> PagesOffice.the(NumberCheckService.class).all(PagesOffice.ELECTION)).stream()
                .filter(one -> one.envelopeNo().value().equals(number) && !one.isSettled())
                .map(MarkedEnvelope::words)
                .toList();
    }

    @Test
    void nothing_of_an_envelope_is_left_for_the_next_one_and_the_bag_stays() {
        pages.on("intake/receive", "jon", () -> {
            type("place", PLACE);
            type("style", "T06-G");
            type("precinct", "301");
            type("party-ballot", "Granite");
            type("cast-day", "8/4/2026");
            type("cast-time", "9:12 pm");
            choose("reason", "moved");
            choose("extended", "no");
            choose("in-line", "yes");
            type("envelope", "P-9101");
            type("receipt", CheckedReceipt.of("77000101").value());
            press("Receive envelope");
            assertThat(MessageLine.words()).isEqualTo("P-9101 received.");
            for (String field : List.of("style", "precinct", "party-ballot", "cast-time", "envelope", "receipt")) {
                assertThat(text(field)).as(field).isEmpty();
            }
            assertThat(chosen("reason")).isEmpty();
            assertThat(chosen("extended")).isEqualTo("unknown");
            assertThat(chosen("in-line")).isEqualTo("unknown");
            assertThat(text("place")).isEqualTo(PLACE);
            assertThat(text("cast-day")).isEqualTo("8/4/2026");
            assertThat(said()).contains("These stay filled in for the next envelope.");
        });
        assertThat(envelope("P-9101").cast())
                .returns("Granite", Envelope.Cast::partyBallot)
                .returns(YesNo.YES, Envelope.Cast::inLineAtClose)
                .returns(LocalDateTime.of(2026, 8, 4, 21, 12), Envelope.Cast::at);
    }

    @Test
    void an_envelope_number_in_small_letters_is_no_other_envelope() {
        pages.on("intake/receive", "jon", () -> {
            numbers("p-9120", CheckedReceipt.of("77000120").value());
            press("Receive envelope");
            assertThat(MessageLine.words()).isEqualTo("P-9120 received.");
            typeAndLeave("envelope", "p-9120");
            assertThat(text("envelope")).isEqualTo("P-9120");
            assertThat(asked("envelope")).startsWith("Envelope P-9120 has already been received.");
        });
        assertThat(isReceived("p-9120")).isFalse();
    }

    @Test
    void a_number_is_found_whatever_the_list_shows() {
        pages.on("intake/receive", "jon", () -> {
            numbers("P-9121", CheckedReceipt.of("77000121").value());
            press("Receive envelope");
        });
        pages.on("intake", "jon", () -> {
            assertThat(chosen("filter")).as("one waits to be keyed").isEqualTo("NOT_KEYED");
            type("sought", "P-1015");
            assertThat(said()).contains("0 envelopes, 1 among all.");
            press("Show all");
            assertThat(chosen("filter")).isEqualTo("ALL");
            assertThat(said()).contains("1 envelope").doesNotContain("among all");
        });
    }

    @Test
    void what_the_election_does_not_list_is_asked_and_of_a_style_refused() {
        pages.on("intake/receive", "jon", () -> {
            typeAndLeave("place", "depot street library");
            assertThat(text("place")).isEqualTo(PLACE);
            typeAndLeave("precinct", "999");
            assertThat(asked("precinct")).startsWith("This election does not list \"999\". Is it right?");
            typeAndLeave("style", "t99");
            assertThat(wrong("style")).isEqualTo("This election has no ballot style t99.");
            type("envelope", "P-9102");
            type("receipt", CheckedReceipt.of("77000102").value());
            press("Receive envelope");
            assertThat(MessageLine.words()).isEqualTo("Not saved. Check the highlighted fields.");
            typeAndLeave("style", "t06-g");
            press("Receive envelope");
            assertThat(MessageLine.words()).isEqualTo("Not saved. Answer the question beside the field.");
            assertThat(isReceived("P-9102")).isFalse();
            assertThat(text("envelope")).as("nothing typed is lost").isEqualTo("P-9102");
            press("Keep it: Precinct");
            assertThat(asked("precinct")).isEqualTo("Kept as typed.");
            press("Receive envelope");
            assertThat(isReceived("P-9102")).isTrue();
        });
        assertThat(envelope("P-9102").cast())
                .returns("999", Envelope.Cast::precinct)
                .returns("T06-G", Envelope.Cast::ballotStyle);
    }

    @Test
    void a_time_outside_voting_hours_is_asked_at_once_and_kept_or_explained() {
        pages.on("intake/receive", "jon", () -> {
            numbers("P-9103", CheckedReceipt.of("77000103").value());
            typeAndLeave("cast-time", "9:12 pm");
            assertThat(asked("cast-time")).startsWith("Polls closed at 8:00 pm. Is 9:12 pm right?");
            choose("in-line", "yes");
            assertThat(asked("cast-time")).isEmpty();
            choose("in-line", "no");
            press("Receive envelope");
            assertThat(isReceived("P-9103")).isFalse();
            typeAndLeave("cast-time", "3:10 am");
            assertThat(asked("cast-time")).startsWith("Polls are not open at 3:10 am. Is it right?");
            typeAndLeave("cast-time", "6:10 pm");
            assertThat(asked("cast-time")).isEmpty();
            choose("extended", "yes");
            assertThat(asked("cast-time")).startsWith("Extended hours begin at 8:00 pm. Is 6:10 pm right?");
            choose("extended", "no");
            typeAndLeave("cast-day", "8/5/2026");
            assertThat(asked("cast-time"))
                    .startsWith("Polls closed on 08/04/2026 at 8:00 pm. Is 08/05/2026 at 6:10 pm right?");
            press("Keep it: Time cast");
            assertThat(asked("cast-time")).isEqualTo("Kept as typed.");
            typeAndLeave("cast-day", "8/6/2026");
            assertThat(asked("cast-time")).as("another question").contains("Is 08/06/2026 at 6:10 pm right?");
            type("stamp-time", "11:00 am");
            typeAndLeave("cast-day", "8/5/2026");
            press("Keep it: Time cast");
            press("Receive envelope");
            assertThat(isReceived("P-9103")).isTrue();
            type("cast-day", "8/4/2026");
        });
    }

    @Test
    void an_envelope_without_a_receipt_number_comes_in_once_the_clerk_says_that_none_is_printed() {
        pages.on("intake/receive", "jon", () -> {
            numbers("P-9104", "");
            leave("receipt");
            assertThat(asked("receipt")).isEmpty();
            press("Receive envelope");
            assertThat(isReceived("P-9104")).isFalse();
            leave("receipt");
            press("No receipt number");
            press("Receive envelope");
            assertThat(MessageLine.words()).isEqualTo("P-9104 received.");
            numbers("P-9105", "");
            press("Receive envelope");
            assertThat(isReceived("P-9105")).as("it is said of each envelope").isFalse();
        });
        assertThat(envelope("P-9104").receiptNo()).isNull();
        assertThat(marks("P-9104")).containsExactly("no receipt number");
        pages.on("intake", "jon", () -> {
            assertThat(said()).contains("Numbers to settle").contains("no receipt number");
            press("Confirm P-9104");
            press("Confirm as it is");
            assertThat(marked("Reason")).startsWith("Required.");
            fill("Reason", "The slip is torn off.");
            press("Confirm as it is");
            assertThat(said()).contains("confirmed: The slip is torn off.");
        });
        assertThat(marks("P-9104")).isEmpty();
    }

    private static ActButton keepReceipt() {
        return _get(
                ActButton.class,
                wanted -> wanted.withPredicate(
                        button -> button.getAriaLabel().equals(Optional.of("Keep it: Receipt number"))));
    }

    @Test
    void a_receipt_number_of_another_envelope_is_kept_and_later_corrected() {
        String receipt = CheckedReceipt.of("77000106").value();
        pages.on("intake/receive", "jon", () -> {
            numbers("P-9106", receipt);
            press("Receive envelope");
            numbers("P-9107", receipt);
            leave("receipt");
            assertThat(asked("receipt")).startsWith("This receipt number is also on P-9106. Is it right?");
            press("Receive envelope");
            assertThat(isReceived("P-9107")).isFalse();
            ActButton keep = keepReceipt();
            leave("receipt");
            assertThat(keepReceipt())
                    .as("a press on it leaves the field, and then is on the same button")
                    .isSameAs(keep);
            press("Keep it: Receipt number");
            assertThat(asked("receipt")).isEqualTo("Receipt number also on P-9106.");
            press("Receive envelope");
            assertThat(isReceived("P-9107")).isTrue();
        });
        assertThat(marks("P-9107")).containsExactly("receipt number also on P-9106");
        pages.on("", "jon", () -> assertThat(said()).contains("Settle numbers"));
        String right = CheckedReceipt.of("77000107").value();
        pages.on("intake", "jon", () -> {
            press("Correct receipt number of P-9107");
            fill("Reason", "Read again.");
            fill("Receipt number", receipt);
            press("Save number");
            assertThat(marked("Receipt number")).startsWith("That is what the envelope has now.");
            fill("Receipt number", right);
            press("Save number");
            assertThat(MessageLine.words()).isEqualTo("Receipt number of P-9107 corrected.");
        });
        assertThat(envelope("P-9107").receiptNo()).isEqualTo(new ReceiptNumber(right));
        assertThat(marks("P-9106")).isEmpty();
    }

    @Test
    void a_second_envelope_with_the_same_number_is_received_under_a_distinct_one() {
        pages.on("intake/receive", "jon", () -> {
            numbers("P-9108", CheckedReceipt.of("77000108").value());
            press("Receive envelope");
            numbers("P-9108", CheckedReceipt.of("77000109").value());
            leave("envelope");
            assertThat(asked("envelope")).startsWith("Envelope P-9108 has already been received.");
            press("Receive as P-9108-2");
            assertThat(text("envelope")).isEqualTo("P-9108-2");
            assertThat(asked("envelope")).isEqualTo("Number also on P-9108.");
            typeAndLeave("envelope", "P-9108-B");
            assertThat(asked("envelope")).isEqualTo("Number also on P-9108.");
            press("Receive envelope");
            assertThat(MessageLine.words()).isEqualTo("P-9108-B received.");
        });
        assertThat(marks("P-9108-B")).containsExactly("number also on P-9108");
    }
}
