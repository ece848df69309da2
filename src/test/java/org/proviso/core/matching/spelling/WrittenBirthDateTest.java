package org.proviso.core.matching.spelling;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class WrittenBirthDateTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1980 | 1980 | 0 | 0",
                "13/40/1980 | 1980 | 0 | 0",
                "02/29/1935 | 1935 | 2 | 0",
                "1935-02-29 | 1935 | 2 | 0",
                "1980-13-40 | 1980 | 0 | 0",
                "13401980 | 1980 | 0 | 0",
                "19801340 | 1980 | 0 | 0",
                "13/05/1980 | 1980 | 5 | 13",
                "June 1980 | 1980 | 6 | 0",
                "June 31, 1980 | 1980 | 6 | 0",
                "31 Jun 1980 | 1980 | 6 | 0",
                "6/1980 | 1980 | 6 | 0",
                "6/12 | 0 | 6 | 12",
                "3/12/84 | 0 | 3 | 12",
                "2/29 | 0 | 2 | 29",
                "2/30 | 0 | 2 | 0",
                "00/00/1980 | 1980 | 0 | 0",
                "1980 1981 | 1980 | 0 | 0",
                "3/12/84/1 | 0 | 0 | 0",
                "do not know | 0 | 0 | 0",
                "99999 | 0 | 0 | 0",
                "'' | 0 | 0 | 0"
            })
    void each_part_that_can_be_read_is_read_and_no_other(String text, int year, int month, int day) {
        assertThat(WrittenBirthDate.read(text)).isEqualTo(new WrittenBirthDate(year, month, day));
        assertThat(WrittenBirthDate.date(text)).isEmpty();
        assertThat(WrittenBirthDate.read(text).isAnything()).isEqualTo(year + month + day > 0);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"1984-03-12", "03/12/1984", "3/12/1984", "03121984", "19840312", "March 12, 1984", "12 Mar 1984"
            })
    void a_date_of_the_calendar_is_one_however_it_is_written(String text) {
        assertThat(WrittenBirthDate.date(text)).contains(LocalDate.of(1984, 3, 12));
    }
}
