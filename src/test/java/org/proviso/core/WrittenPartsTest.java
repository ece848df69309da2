package org.proviso.core;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Names, addresses and receipt numbers of which a part was not given. */
class WrittenPartsTest {

    @ParameterizedTest
    @CsvSource({
        "Oyelaran, Catherine, Marie, Jr, 'Oyelaran, Catherine Marie Jr'",
        "Oyelaran, '', '', '', Oyelaran",
        "'', Catherine, Marie, '', Catherine Marie",
        "Oyelaran, '', '', Jr, Oyelaran Jr"
    })
    void a_name_is_listed_by_the_parts_that_were_given(
            String last, String first, String middle, String suffix, String listed) {
        assertThat(new PersonName(last, first, middle, suffix).listed()).isEqualTo(listed);
    }

    @ParameterizedTest
    @CsvSource({
        "88 Sorrel Ln, Apt 3, Millbrook, 49871, '88 Sorrel Ln Apt 3, Millbrook 49871'",
        "88 Sorrel Ln, '', '', '', 88 Sorrel Ln",
        "'', '', Millbrook, 49871, Millbrook 49871"
    })
    void an_address_reads_as_one_line_of_the_parts_that_were_given(
            String line, String unit, String city, String zip, String oneLine) {
        assertThat(new Address(line, unit, city, zip).oneLine()).isEqualTo(oneLine);
    }

    @Test
    void a_receipt_number_is_compared_by_its_letters_and_digits_and_no_text_is_no_number() {
        assertThat(new ReceiptNumber(" ehy7-5b\u00e9 ").compared()).isEqualTo("EHY75B\u00c9");
        assertThat(ReceiptNumber.orNull("")).isNull();
        assertThat(ReceiptNumber.text(null)).isEmpty();
        assertThat(ReceiptNumber.text(ReceiptNumber.orNull("R 1"))).isEqualTo("R 1");
    }

    @ParameterizedTest
    @ValueSource(strings = {"48172206/", "48172206:", "4817220a6"})
    void what_is_no_digit_is_named_first(String typed) {
        assertThat(CheckedReceipt.slip(typed)).contains(CheckedReceipt.Problem.NOT_ONLY_DIGITS);
    }
}
