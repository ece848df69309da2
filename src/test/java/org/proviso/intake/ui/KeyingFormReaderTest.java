package org.proviso.intake.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.proviso.core.Envelope.Field;
import org.proviso.core.Envelope.FieldState;
import org.proviso.core.Envelope.VoterSignature;
import org.proviso.core.YesNo;
import org.proviso.intake.keying.KeyedText;

/** What stands in the boxes of the keying form becomes an affirmation, or a sentence beside the box. */
class KeyingFormReaderTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 11, 4);

    private static Map<String, String> boxes() {
        Map<String, String> boxes = new HashMap<>();
        boxes.put("last_name", "Marsh");
        boxes.put("first_name", "Ada");
        boxes.put("date_of_birth", "03121984");
        boxes.put("residence_address_line", "12 Copper Rd");
        boxes.put("city", "Port Ansel");
        boxes.put("zip", "49879");
        boxes.put("id_last4", "1234");
        boxes.put("statements_ticked", "citizen;resident");
        boxes.put("voter_signed", "mark");
        boxes.put("mark_witness", "yes");
        return boxes;
    }

    private static KeyingFormReader read(Map<String, String> boxes) {
        return new KeyingFormReader(boxes, TODAY);
    }

    @Test
    void a_form_filled_in_is_read_whole() {
        KeyingFormReader read = read(boxes());
        assertThat(read.problems()).isEmpty();
        assertThat(read.affirmation().birthDate()).isEqualTo(LocalDate.of(1984, 3, 12));
        assertThat(read.affirmation().statementsTicked()).isEqualTo(Set.of("citizen", "resident"));
        assertThat(read.affirmation().fieldStates()).isEmpty();
        assertThat(read.seen().voterSigned()).isEqualTo(VoterSignature.MARK);
        assertThat(read.seen().markWitness()).isEqualTo(YesNo.YES);
        assertThat(read.seen().officialSigned()).isEqualTo(YesNo.UNKNOWN);
    }

    @Test
    void a_date_of_birth_that_is_none_is_kept_as_the_voter_wrote_it() {
        Map<String, String> boxes = boxes();
        boxes.put("date_of_birth", " 13/40/1980 ");
        assertThat(read(boxes).problems()).isEmpty();
        assertThat(read(boxes).affirmation().birthDate()).isNull();
        assertThat(read(boxes).affirmation().birthDateAsWritten()).isEqualTo("13/40/1980");
        assertThat(KeyingFormReader.question(KeyingBox.DATE_OF_BIRTH, "13/40/1980", TODAY))
                .isEqualTo("\"13/40/1980\" is not a date. Is this what the voter wrote?");
        assertThat(KeyingFormReader.question(KeyingBox.DATE_OF_BIRTH, "11/5/2026", TODAY))
                .isEqualTo("This date is in the future. Is this what the voter wrote?");
        assertThat(KeyingFormReader.question(KeyingBox.DATE_OF_BIRTH, "3/12/1984", TODAY))
                .isEmpty();
        assertThat(KeyingFormReader.question(KeyingBox.DATE_OF_BIRTH, "", TODAY))
                .isEmpty();
    }

    @Test
    void an_empty_box_whose_state_is_kept_has_to_say_why() {
        Map<String, String> boxes = boxes();
        boxes.put("id_last4", " ");
        boxes.put("statements_ticked", "");
        assertThat(read(boxes).problems()).containsOnlyKeys("id_last4", "statements_ticked");
        boxes.put("id_last4_state", "refused");
        boxes.put("statements_ticked_state", "left_blank");
        assertThat(read(boxes).problems()).isEmpty();
        assertThat(read(boxes).affirmation().fieldStates())
                .isEqualTo(Map.of(Field.ID_LAST4, FieldState.REFUSED, Field.STATEMENTS_TICKED, FieldState.LEFT_BLANK));
    }

    @Test
    void what_is_wrong_is_said_beside_its_box() {
        Map<String, String> boxes = boxes();
        boxes.put("date_of_birth", "1".repeat(41));
        boxes.put("moved_on", "12/24/2026");
        boxes.put("zip", "4".repeat(21));
        boxes.put("id_last4", "12-34");
        assertThat(read(boxes).problems())
                .containsEntry("date_of_birth", "At most 40 characters.")
                .containsEntry("moved_on", "This date is in the future.")
                .containsEntry("zip", "At most 20 characters.")
                .containsEntry("id_last4", "Digits and letters only.");
        boxes.put("moved_on", "13/40/1984");
        assertThat(read(boxes).problems())
                .containsEntry("moved_on", "Enter the month, day and year: 3/12/1984 or 03121984.");
        boxes.put("zip", "4987l");
        assertThat(read(boxes).problems())
                .containsEntry("zip", "Digits and a hyphen only. If it cannot be read, mark it illegible.");
        boxes.put("zip", "49879-1234");
        assertThat(read(boxes).problems()).doesNotContainKey("zip");
    }

    @Test
    void what_was_keyed_before_is_taken_over_with_its_state() {
        Map<String, String> boxes = boxes();
        boxes.put("id_last4_state", "keyed");
        boxes.put("last_name_state", "keyed");
        KeyingDifferences.put(boxes, "id_last4", new KeyedText("", FieldState.LEFT_BLANK));
        KeyingDifferences.put(boxes, "last_name", new KeyedText("Mar", FieldState.ILLEGIBLE));
        KeyingDifferences.put(boxes, "id_kind", new KeyedText("passport", FieldState.KEYED));
        assertThat(boxes)
                .containsEntry("id_last4", "")
                .containsEntry("id_last4_state", "left_blank")
                .containsEntry("last_name", "Mar")
                .containsEntry("last_name_state", "illegible")
                .containsEntry("id_kind", "passport")
                .doesNotContainKey("id_kind_state");
    }
}
