package org.proviso.ui.field;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalTime;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a clerk types as a day or a time. */
class TypedDatesTest {

    @ParameterizedTest
    @ValueSource(strings = {"3/12/1984", "03/12/1984", "03121984", " 3-12-1984 ", "3.12.1984", "1984-03-12"})
    void march_12_1984_is_read_however_it_is_typed(String typed) {
        assertThat(TypedDates.day(typed)).contains(LocalDate.of(1984, 3, 12));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "3/12/84", "13/40/1984", "02/30/2000", "3121984", "March 12", "3/12/19844", "31/12/1984"})
    void what_is_no_day_or_could_be_two_is_not_guessed_at(String typed) {
        assertThat(TypedDates.day(typed)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "6:52 pm, 18:52",
        "652p, 18:52",
        "18:52, 18:52",
        "1852, 18:52",
        "12:05 am, 00:05",
        "12p, 12:00",
        "7 am, 07:00",
        "0905, 09:05",
        "9:05 A.M., 09:05"
    })
    void a_time_is_read_however_it_is_typed(String typed, LocalTime meant) {
        assertThat(TypedDates.time(typed)).contains(meant);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "7", "25:00", "13:00 pm", "6:75 pm", "noon", "0:10 am"})
    void what_is_no_time_is_not_guessed_at(String typed) {
        assertThat(TypedDates.time(typed)).isEmpty();
    }
}
