package org.proviso.core.matching.spelling;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a roll rarely holds, and what must not be misread all the same. */
class RareSpellingsTest {

    private static int date(String cell) {
        byte[] bytes = cell.getBytes(StandardCharsets.UTF_8);
        return PackedDate.of(bytes, 0, bytes.length);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "1974-13-09",
                "1974-00-09",
                "1974-02-00",
                "1974-02-30",
                "1975-02-29",
                "1974/03-09",
                "1974-03/09",
                "197a-03-09",
                "197/-03-09",
                "1974-3-9",
                "1974-03-099"
            })
    void a_cell_that_no_calendar_has_is_no_date(String cell) {
        assertThat(date(cell)).isEqualTo(PackedDate.NOT_A_DATE);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "1900-01-01", "0000-05-05"})
    void an_empty_cell_and_a_placeholder_are_unknown(String cell) {
        assertThat(date(cell)).isEqualTo(PackedDate.UNKNOWN);
    }

    @ParameterizedTest
    @ValueSource(strings = {"1974-03-09", "1976-02-29", "2001-12-31", "1974-01-28"})
    void a_cell_and_a_day_of_the_calendar_are_one(String cell) {
        assertThat(date(cell)).isEqualTo(PackedDate.of(LocalDate.parse(cell))).isPositive();
    }

    @Test
    void a_day_outside_four_digits_of_years_is_unknown() {
        assertThat(PackedDate.of((LocalDate) null)).isEqualTo(PackedDate.UNKNOWN);
        assertThat(PackedDate.of(LocalDate.of(-5, 1, 2))).isEqualTo(PackedDate.UNKNOWN);
        assertThat(PackedDate.of(LocalDate.of(10_000, 1, 2))).isEqualTo(PackedDate.UNKNOWN);
    }

    @ParameterizedTest
    @CsvSource({"APT 3-B, '', 3B", "UNIT 3 B, '', 3B", "'', A, A"})
    void a_door_is_one_however_its_unit_is_called(String unit, String letter, String door) {
        assertThat(new StreetAddress(1, letter, "MAIN ST", unit).door()).isEqualTo(door);
    }

    @ParameterizedTest
    @CsvSource({
        "12, OAK ST, 12, OAT ST, true",
        "12, OAK ST, 12, OKA ST, true",
        "12, OAK ST, 13, OAT ST, false",
        "0, OAK ST, 0, OAT ST, false",
        "12, 4TH ST, 12, 5TH ST, false",
        "12, ELM ST, 12, OAK ST, false",
        "12, SYCAMORE ST, 12, SYCOMOR ST, true"
    })
    void a_slip_of_the_pen_is_one_letter_of_a_street_that_is_not_numbered(
            int house, String street, int otherHouse, String other, boolean slip) {
        assertThat(new StreetAddress(house, "", street, "").isOneSlipFrom(new StreetAddress(otherHouse, "", other, "")))
                .isEqualTo(slip);
    }

    @Test
    void every_spelling_of_a_column_is_read_once_however_many_there_are() {
        List<String> read = new ArrayList<>();
        SpellingCache cache = new SpellingCache(text -> {
            read.add(text);
            return Integer.parseInt(text);
        });
        RollLine line = new RollLine();
        for (int round = 0; round < 2; round++) {
            for (int number = 0; number < 9_000; number++) {
                byte[] bytes = String.valueOf(number).getBytes(StandardCharsets.UTF_8);
                line.in(bytes);
                line.put(RollLine.Cell.LAST_NAME, 0, bytes.length);
                assertThat(cache.of(line, RollLine.Cell.LAST_NAME)).isEqualTo(number);
            }
        }
        assertThat(read).hasSize(9_000).doesNotHaveDuplicates();
    }
}
