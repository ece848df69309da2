package org.proviso.files.csv;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What a spreadsheet would take for a formula (OWASP, CSV Injection). */
class SpreadsheetTextTest {

    @Test
    void a_cell_that_would_begin_a_formula_begins_with_an_apostrophe() {
        for (String formula : List.of("=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1", "\n=1", "=")) {
            assertThat(SpreadsheetText.of(formula)).isEqualTo("'" + formula);
        }
    }

    @Test
    void any_other_cell_stays_as_it_is() {
        for (String plain : List.of("", "P-1001", "Smith-Jones", "a=b", "'=1", "2026-11-04 09:00")) {
            assertThat(SpreadsheetText.of(plain)).isEqualTo(plain);
        }
    }
}
