package org.proviso.review.find;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.proviso.review.find.FindQuery.Name;

/** What somebody typed, as a number, a date or a name. */
class FindQueryTest {

    @Test
    void a_number_is_sought_as_typed_and_with_the_zeros_left_out() {
        assertThat(FindQuery.of(" 417 ").numbers()).containsExactly("417", "000417");
        assertThat(FindQuery.of("G-1030").numbers()).containsExactly("G-1030");
    }

    @Test
    void a_date_is_read_as_americans_write_it_and_as_files_do() {
        assertThat(FindQuery.of("3/12/1984").date()).contains(LocalDate.of(1984, 3, 12));
        assertThat(FindQuery.of("1984-03-12").date()).contains(LocalDate.of(1984, 3, 12));
        assertThat(FindQuery.of("13/12/1984").date()).isEmpty();
    }

    @Test
    void a_name_is_taken_apart_either_way_round() {
        assertThat(FindQuery.of("voss, kath").names()).containsExactly(new Name("Voss", "kath"));
        assertThat(FindQuery.of("kath voss").names())
                .containsExactly(new Name("Voss", "kath"), new Name("Kath", "voss"));
        assertThat(FindQuery.of("voss").names()).containsExactly(new Name("Voss", ""));
        assertThat(FindQuery.of("v").names()).isEmpty();
    }

    @Test
    void a_surname_may_have_several_words() {
        assertThat(FindQuery.of("rosa de la cruz").names())
                .contains(new Name("De la cruz", "rosa"), new Name("Cruz", "rosa de la"));
        assertThat(FindQuery.of("de la cruz rosa").names()).contains(new Name("De la cruz", "rosa"));
    }

    @Test
    void digits_and_then_words_are_an_address() {
        assertThat(FindQuery.of("1204 Quarry").isAddress()).isTrue();
        assertThat(FindQuery.of("1204 n 3rd st").isAddress()).isTrue();
        assertThat(FindQuery.of("1204").isAddress()).isFalse();
        assertThat(FindQuery.of("12 34").isAddress()).isFalse();
        assertThat(FindQuery.of("V1204 Quarry").isAddress()).isFalse();
        assertThat(FindQuery.of("Voss, Katherine").isAddress()).isFalse();
    }
}
