package org.proviso.files.csv;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Cells for people who open a file in a spreadsheet. */
class CsvOutputTest {

    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1"})
    void what_begins_like_a_formula_is_text(String cell) {
        assertThat(CsvOutput.text(cell)).isEqualTo("'" + cell);
    }

    @ParameterizedTest
    @CsvSource({"'Roe, Jane'", "4817-2206-5", "''", "M200001: returned"})
    void everything_else_is_as_it_is(String cell) {
        assertThat(CsvOutput.text(cell)).isEqualTo(cell);
    }
}
