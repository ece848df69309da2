package org.proviso.review.find;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;

/** What somebody typed, as a number, a date or a name. */
class SoughtTest {

    @Test
    void a_number_is_sought_as_typed_and_with_the_zeros_left_out() {
        assertThat(Sought.of(" 417 ").numbers()).containsExactly("417", "000417");
        assertThat(Sought.of("G-1030").numbers()).containsExactly("G-1030");
    }

    @Test
    void a_date_is_read_as_americans_write_it_and_as_files_do() {
        assertThat(Sought.of("3/12/1984").date()).contains(LocalDate.of(1984, 3, 12));
        assertThat(Sought.of("1984-03-12").date()).contains(LocalDate.of(1984, 3, 12));
        assertThat(Sought.of("13/12/1984").date()).isEmpty();
    }

    @Test
    void a_name_is_taken_apart_either_way_round() {
        assertThat(Sought.of("voss, kath").last()).isEqualTo("Voss");
        assertThat(Sought.of("voss, kath").first()).isEqualTo("kath");
        assertThat(Sought.of("kath voss").last()).isEqualTo("Voss");
        assertThat(Sought.of("kath voss").first()).isEqualTo("kath");
    }

    @Test
    void digits_and_then_words_are_an_address() {
        assertThat(Sought.of("1204 Quarry").isAddress()).isTrue();
        assertThat(Sought.of("1204 n 3rd st").isAddress()).isTrue();
        assertThat(Sought.of("1204").isAddress()).isFalse();
        assertThat(Sought.of("12 34").isAddress()).isFalse();
        assertThat(Sought.of("V1204 Quarry").isAddress()).isFalse();
        assertThat(Sought.of("Voss, Katherine").isAddress()).isFalse();
    }
}
