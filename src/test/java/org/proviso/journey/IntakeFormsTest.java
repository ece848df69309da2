package org.proviso.journey;

import static com.github.mvysny.kaributesting.v10.LocatorJ._get;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.proviso.journey.Office.as;
import static org.proviso.journey.PageDriver.asked;
import static org.proviso.journey.PageDriver.choose;
import static org.proviso.journey.PageDriver.fill;
import static org.proviso.journey.PageDriver.leave;
import static org.proviso.journey.PageDriver.marked;
import static org.proviso.journey.PageDriver.press;
import static org.proviso.journey.PageDriver.said;
import static org.proviso.journey.PageDriver.text;
import static org.proviso.journey.PageDriver.type;
import static org.proviso.journey.PageDriver.typeAndLeave;
import static org.proviso.journey.PageDriver.wrong;

import com.vaadin.flow.component.checkbox.Checkbox;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.proviso.core.CheckedReceipt;
import org.proviso.core.Envelope;
import org.proviso.core.Envelope.Field;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.adjudication.finding.CureEvidence;
import org.proviso.core.rules.Ask;
import org.proviso.intake.IntakeService;
import org.proviso.intake.RecordTransmittal;
import org.proviso.intake.cure.CureScanService;
import org.proviso.intake.desk.EnvelopeListService;
import org.proviso.intake.keying.KeyingDraft;
import org.proviso.intake.keying.KeyingService;
import org.proviso.ui.MessageLine;
import org.springframework.beans.factory.annotation.Autowired;

/** What intake enters: ReceiveForm (more of it in ReceivingPageTest), KeyingDraftForm with its KeyingForm, CureForm, TransmittalForm. */
@OnPages
class IntakeFormsTest {

    private static final String NOT_SAVED = "Not saved. Check the highlighted fields.";

    @Autowired
    private PageDriver pages;

    private void receive(String number, String receipt) {
        type("place", "Depot Street Library");
        type("style", "T06-G");
        type("envelope", number);
        type("receipt", receipt);
        press("Receive envelope");
    }

    private static boolean isReceived(String number) {
        return as(
                        "jon",
                        () -> PagesOffice.the(EnvelopeListService.class)
                                .line(PagesOffice.ELECTION, new EnvelopeNumber(number)))
                .isPresent();
    }

    @Test
    void an_envelope_is_received_with_its_receipt_number() {
        pages.on("intake/receive", "jon", () -> {
            receive("P-9001", "");
            assertThat(asked("receipt")).startsWith("Required. If none is printed");
            assertThat(isReceived("P-9001")).isFalse();
            receive("P-9001", CheckedReceipt.of("77000001").value());
            assertThat(said()).contains("P-9001");
            assertThat(isReceived("P-9001")).isTrue();
        });
    }

    @Test
    void the_affirmation_is_keyed_box_by_box_and_saved_on_the_way() {
        pages.on(
                "intake/receive",
                "jon",
                () -> receive("P-9002", CheckedReceipt.of("77000002").value()));
        pages.on("intake/key/P-9002", "jon", () -> {
            type("last_name", "Kell");
            press("Finish keying");
            assertThat(wrong("last_name")).isEmpty();
            assertThat(wrong("first_name")).isEqualTo("Required. Key it, or mark it left blank, illegible or refused.");
            assertThat(said()).contains("Check the statements the voter checked, or mark left blank.");
            assertThat(MessageLine.words()).startsWith("Not saved. Check the highlighted fields (");
            assertThat(affirmation("P-9002").name().last()).isEmpty();
        });
        assertThat(draft("P-9002").boxes()).containsEntry("last_name", "Kell");
        assertThat(draft("P-9002").finished()).isFalse();
        pages.on("intake/key/P-9002", "jon", () -> {
            assertThat(said()).contains("Your saved draft");
            keyed().forEach(PageDriver::type);
            _get(Checkbox.class, box -> box.withLabel("resident")).setValue(true);
            press("Finish keying");
            assertThat(MessageLine.words()).isEqualTo("Not saved. Answer the question beside the field.");
            assertThat(asked("voter_signed")).startsWith("Did the voter sign?");
            choose("voter_signed", "yes");
            assertThat(asked("voter_signed")).isEmpty();
            press("Finish keying");
            assertThat(MessageLine.words()).startsWith("P-9002 keyed.");
        });
        assertThat(draft("P-9002").finished()).isTrue();
        assertThat(affirmation("P-9002"))
                .extracting(
                        said -> said.name().last(), said -> said.name().first(), Envelope.Affirmation::statementsTicked)
                .containsExactly("Kell", "Maud", Set.of("resident"));
    }

    @Test
    void what_cannot_be_is_said_and_what_is_unlikely_is_asked_as_the_field_is_left() {
        pages.on(
                "intake/receive",
                "jon",
                () -> receive("P-9003", CheckedReceipt.of("77000003").value()));
        pages.on("intake/key/P-9003", "jon", () -> {
            typeAndLeave("date_of_birth", "3/12/2084");
            assertThat(asked("date_of_birth")).startsWith("This date is in the future. Is this what the voter wrote?");
            typeAndLeave("moved_on", "3/12/2084");
            assertThat(wrong("moved_on")).isEqualTo("This date is in the future.");
            typeAndLeave("zip", "4987l");
            assertThat(wrong("zip")).startsWith("Digits and a hyphen only.");
            typeAndLeave("former_zip", "K1A 0B1");
            assertThat(asked("former_zip")).startsWith("A ZIP has digits and a hyphen only. Is K1A 0B1 right?");
            press("Keep it: Former ZIP");
            assertThat(asked("former_zip")).isEqualTo("Kept as typed.");
            leave("voter_signed");
            press("Keep it: Voter signed");
            assertThat(asked("voter_signed")).isEqualTo("Kept as chosen.");
            assertThat(text("date_of_birth")).as("nothing typed is lost").isEqualTo("03/12/2084");
            assertThat(text("zip")).isEqualTo("4987l");
        });
        pages.on("intake/key/P-9003", "jon", () -> {
            assertThat(text("zip")).isEqualTo("4987l");
            assertThat(asked("former_zip")).isEqualTo("Kept as typed.");
            assertThat(asked("voter_signed")).isEqualTo("Kept as chosen.");
            typeAndLeave("former_zip", "K1A 0B2");
            assertThat(asked("former_zip")).startsWith("A ZIP has digits");
        });
    }

    /** What is not on the paper is marked as left blank. */
    private static Map<String, String> keyed() {
        Map<String, String> keyed = new java.util.LinkedHashMap<>();
        for (Field field : Field.values()) {
            if (field != Field.STATEMENTS_TICKED && field != Field.LAST_NAME) {
                keyed.put(field.code(), "-");
            }
        }
        keyed.put("first_name", "Maud");
        keyed.put("date_of_birth", "3/12/1984");
        return keyed;
    }

    private static Envelope.Affirmation affirmation(String number) {
        return PagesOffice.the(IntakeService.class)
                .envelope(PagesOffice.ELECTION, new EnvelopeNumber(number))
                .orElseThrow()
                .affirmation();
    }

    private static KeyingDraft draft(String number) {
        return as(
                        "jon",
                        () -> PagesOffice.the(KeyingService.class)
                                .draft(PagesOffice.ELECTION, new EnvelopeNumber(number)))
                .orElseThrow();
    }

    @Test
    void what_a_voter_brought_is_recorded_with_its_stamp() {
        EnvelopeKey key = PagesOffice.key("P-1016");
        pages.on("intake/cure", "jon", () -> {
            type("sought", "P-1016");
            choose("kind", Ask.SIGNATURE.code());
            type("stamp-day", "yesterday");
            press("Record evidence");
            assertThat(wrong("stamp-day")).isEqualTo("Enter the month, day and year: 3/12/1984 or 03121984.");
            assertThat(wrong("words")).startsWith("Required.");
            assertThat(MessageLine.words()).isEqualTo(NOT_SAVED);
            type("stamp-day", "8/7/2026");
            type("stamp-time", "9:15 am");
            type("words", "Passport, shown at the counter.");
            press("Record evidence");
            assertThat(wrong("stamp-day")).contains("is later than now");
            assertThat(brought(key)).isEmpty();
            type("stamp-day", "8/6/2026");
            press("Record evidence");
            assertThat(MessageLine.words()).isEqualTo("Evidence recorded for envelope P-1016.");
            assertThat(said()).contains("Not enough", "It came in time, but the voter still owes more.");
            assertThat(said()).contains("The voter may still bring or send identification, until");
        });
        assertThat(brought(key))
                .extracting(CureEvidence::ask, CureEvidence::receivedAt, CureEvidence::words)
                .containsExactly(
                        tuple(Ask.SIGNATURE, LocalDateTime.of(2026, 8, 6, 9, 15), "Passport, shown at the counter."));
        byte[] scan = {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF, 1};
        PagesOffice.done(
                "jon",
                () -> PagesOffice.the(CureScanService.class)
                        .keep(key.electionId(), key.envelopeNo(), 1, "passport.jpg", scan));
        pages.on(
                "review/case/P-1016",
                "ada",
                () -> assertThat(said()).contains("What the voter brought", "Scan 1 of evidence 1"));
        pages.on("intake/cure", "jon", () -> {
            type("sought", "P-1016");
            assertThat(said()).contains("Add scan or photo");
            press("Take back evidence 1 of P-1016");
            press("Take back evidence");
            assertThat(marked("Reason")).startsWith("Required.");
            fill("Reason", "It was another voter's.");
            press("Take back evidence");
            assertThat(MessageLine.words()).isEqualTo("Evidence of envelope P-1016 taken back.");
            assertThat(said()).contains("Taken back: It was another voter's.", "Scan 1 of evidence 1");
            assertThat(said()).doesNotContain("Add scan or photo");
        });
        assertThat(brought(key)).isEmpty();
    }

    private static List<CureEvidence> brought(EnvelopeKey key) {
        return PagesOffice.the(IntakeService.class)
                .cureEvidence(key.electionId(), key.envelopeNo(), ZoneId.of("America/Detroit"));
    }

    @Test
    void a_transmittal_is_recorded_with_what_was_issued_and_sent_back() {
        pages.on("intake/transmittals", "jon", () -> {
            type("place", "Harbor Annex");
            type("issued", "ten");
            press("Record transmittal");
            assertThat(wrong("issued")).isEqualTo("Enter a whole number.");
            assertThat(wrong("returned")).isEqualTo("Required.");
            assertThat(MessageLine.words()).isEqualTo(NOT_SAVED);
            assertThat(numbers("Harbor Annex")).isEmpty();
            type("issued", "10");
            type("returned", "9");
            type("spoiled", "1");
            type("day", "8/4/2026");
            press("Record transmittal");
            assertThat(MessageLine.words()).isEqualTo("Harbor Annex: transmittal recorded.");
        });
        assertThat(numbers("Harbor Annex")).containsExactly(List.of(10, 9, 1));
        pages.on("intake/transmittals", "jon", () -> {
            press("Correct Harbor Annex");
            type("returned", "8");
            press("Record transmittal");
            assertThat(MessageLine.words()).isEqualTo("Harbor Annex: transmittal corrected.");
        });
        assertThat(numbers("Harbor Annex")).containsExactly(List.of(10, 8, 1));
    }

    @Test
    void the_missing_return_of_a_location_is_begun_with_its_name_and_known_names_are_spelled_as_before() {
        pages.on(RecordTransmittal.missing("Prospect & Mill Annex"), "jon", () -> {
            assertThat(text("place")).isEqualTo("Prospect & Mill Annex");
            typeAndLeave("place", "depot street library");
            assertThat(text("place")).isEqualTo("Depot Street Library");
            typeAndLeave("place", "Nowhere Hall");
            assertThat(text("place")).as("nothing came from there yet").isEqualTo("Nowhere Hall");
        });
    }

    /** Issued, sent back and spoiled. */
    private static List<List<Integer>> numbers(String place) {
        return PagesOffice.the(IntakeService.class).transmittals(PagesOffice.ELECTION).stream()
                .filter(one -> one.votingLocation().equals(place))
                .map(one -> List.of(one.issued(), one.returned(), one.spoiled()))
                .toList();
    }
}
