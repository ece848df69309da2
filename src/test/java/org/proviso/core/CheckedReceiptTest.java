package org.proviso.core;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.proviso.core.CheckedReceipt.Problem;

class CheckedReceiptTest {

    private static String digits(int number) {
        return CheckedReceipt.of("%08d".formatted(number)).value().replace("-", "");
    }

    /** The standard's own example, and numbers of a tax office that uses it, published for tests (all from memory). */
    @ParameterizedTest
    @CsvSource({"0794, 5", "8609574271, 9", "4703689281, 6", "6592997048, 9"})
    void the_check_digit_is_that_of_the_standard(String digits, char check) {
        assertThat(CheckedReceipt.checkDigit(digits)).isEqualTo(check);
    }

    @Test
    void it_is_written_as_on_the_receipt_and_begins_with_a_zero_where_it_does() {
        assertThat(CheckedReceipt.of("48172206").value()).isEqualTo("4817-2206-5");
        assertThat(CheckedReceipt.of("00000794").value())
                .startsWith("0000-0794-")
                .hasSize(11);
    }

    @Test
    void blanks_and_dashes_of_any_kind_do_not_matter() {
        for (String typed : new String[] {"481722065", " 4817 2206 5 ", "4817-2206-5", "4817\u20132206\u20145"}) {
            assertThat(CheckedReceipt.find(typed)).as(typed).contains(new ReceiptNumber("4817-2206-5"));
        }
    }

    @Test
    void what_is_wrong_is_said() {
        assertThat(CheckedReceipt.slip("4817-2206-4")).contains(Problem.CHECK_DIGIT);
        assertThat(CheckedReceipt.slip("4817-2206")).contains(Problem.NOT_NINE_DIGITS);
        assertThat(CheckedReceipt.slip("")).contains(Problem.NOT_NINE_DIGITS);
        assertThat(CheckedReceipt.slip("869H-Q7MF")).contains(Problem.NOT_ONLY_DIGITS);
        assertThat(CheckedReceipt.find("4817-2206-4")).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"4817220", "481722065", "4817220a", ""})
    void no_number_is_made_of_more_or_less_than_eight_digits(String eight) {
        assertThatThrownBy(() -> CheckedReceipt.of(eight)).isInstanceOf(IllegalArgumentException.class);
    }

    @Property
    void one_wrong_digit_is_always_found(
            @ForAll @IntRange(max = 99_999_999) int number,
            @ForAll @IntRange(max = 8) int place,
            @ForAll @IntRange(min = 1, max = 9) int more) {
        char[] digits = digits(number).toCharArray();
        digits[place] = (char) ('0' + (digits[place] - '0' + more) % 10);
        assertThat(CheckedReceipt.slip(new String(digits))).contains(Problem.CHECK_DIGIT);
    }

    /** Of the ten states that the sum can be in and ninety unequal pairs, twenty pass: two in ninety. */
    @Test
    void of_all_swaps_of_two_neighbors_one_in_forty_five_is_missed() {
        int missed = 0;
        int swaps = 0;
        for (int number = 0; number < 100_000; number++) {
            String digits = digits(number);
            if (digits.charAt(6) != digits.charAt(7)) {
                swaps++;
                String swapped = digits.substring(0, 6) + digits.charAt(7) + digits.charAt(6) + digits.charAt(8);
                missed += CheckedReceipt.slip(swapped).isEmpty() ? 1 : 0;
            }
        }
        assertThat(missed / (double) swaps).isBetween(0.02, 0.025);
    }
}
