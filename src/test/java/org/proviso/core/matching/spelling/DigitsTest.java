package org.proviso.core.matching.spelling;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.proviso.core.matching.grades.DateGrade;

class DigitsTest {

    @Property
    void spreading_and_taking_the_value_goes_back_and_forth(@ForAll @IntRange(max = 99_999_999) int number) {
        assertThat(Digits.value(Digits.spread(number))).isEqualTo(number);
    }

    /** The edit distance of the written numbers says the same by another way. */
    @Property
    void a_slip_is_one_changed_digit_or_two_neighbors_exchanged(
            @ForAll @IntRange(min = 1_000, max = 9_999) int a,
            @ForAll @IntRange(max = 3) int from,
            @ForAll @IntRange(max = 3) int to,
            @ForAll boolean exchanged,
            @ForAll @IntRange(max = 9) int digit) {
        String text = String.valueOf(a);
        StringBuilder changedText = new StringBuilder(text);
        changedText.setCharAt(from, exchanged ? text.charAt(to) : (char) ('0' + digit));
        changedText.setCharAt(to, exchanged ? text.charAt(from) : text.charAt(to));
        String other = changedText.toString();
        int b = Integer.parseInt(other);
        int changed = 0;
        for (int i = 0; i < text.length(); i++) {
            changed += text.charAt(i) == other.charAt(i) ? 0 : 1;
        }
        boolean slip = changed == 1 || changed == 2 && EditDistance.optimalStringAlignment(text, other) == 1;
        assertThat(Digits.slip(Digits.spread(a), Digits.spread(b))).isEqualTo(slip);
    }

    @Test
    void birth_dates_are_graded_by_the_slip_that_explains_them() {
        assertThat(grade("1974-03-09", "1974-03-09")).isEqualTo(DateGrade.SAME);
        assertThat(grade("1974-03-09", "1974-09-03")).isEqualTo(DateGrade.SWAPPED);
        assertThat(grade("1974-03-09", "1974-03-19")).isEqualTo(DateGrade.SLIP);
        assertThat(grade("1974-03-09", "1947-03-09")).isEqualTo(DateGrade.SLIP);
        assertThat(grade("1999-03-09", "2000-03-09")).isEqualTo(DateGrade.YEAR_OFF);
        assertThat(grade("1974-03-09", "1981-12-24")).isEqualTo(DateGrade.CONFLICT);
        assertThat(grade("1974-03-09", "1900-01-01")).isEqualTo(DateGrade.UNKNOWN);
        assertThat(grade("1111-11-11", "1974-03-09")).isEqualTo(DateGrade.UNKNOWN);
    }

    private static DateGrade grade(String a, String b) {
        return DateGrade.of(PackedDate.of(LocalDate.parse(a)), PackedDate.of(LocalDate.parse(b)));
    }
}
