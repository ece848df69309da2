package org.proviso.core.matching.spelling;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.proviso.core.PersonName;
import org.proviso.core.matching.index.FormerName;

class NameTextTest {

    @ParameterizedTest
    @CsvSource({
        "Mc Donald, MCDONALD",
        "McDonald, MCDONALD",
        "O'Brien, OBRIEN",
        "O Brien, OBRIEN",
        "\"O\u2019Brien\", OBRIEN",
        "de la Cruz, DELACRUZ",
        "Núñez, NUNEZ",
        "Łukaszewski, LUKASZEWSKI",
        "García-López, GARCIA LOPEZ",
        "Garcia Lopez, GARCIA LOPEZ",
        "Van Dyke, VANDYKE",
        "St. James, STJAMES",
        "Saint James, STJAMES"
    })
    void a_surname_gets_one_spelling(String written, String expected) {
        assertThat(NameText.surname(written)).isEqualTo(expected);
        assertThat(NameText.surname(expected)).isEqualTo(expected);
    }

    @Test
    void a_generation_mark_is_found_in_any_box() {
        assertThat(parsed("Oyelaran Jr.", "Tunde", "", "").suffix()).isEqualTo(NameSuffix.JUNIOR);
        assertThat(parsed("Oyelaran Jr.", "Tunde", "", "").surname()).isEqualTo("OYELARAN");
        assertThat(parsed("Oyelaran", "Tunde III", "", "").suffix()).isEqualTo(NameSuffix.THIRD);
        assertThat(parsed("Oyelaran", "Tunde", "", "SR").suffix()).isEqualTo(NameSuffix.SENIOR);
        assertThat(parsed("Oyelaran", "Tunde V", "", "").suffix()).isEqualTo(NameSuffix.NONE);
    }

    @Test
    void a_second_given_name_goes_to_the_middle_names() {
        assertThat(parsed("Reyes", "Maria Elena", "Sol", ""))
                .isEqualTo(new ParsedName("REYES", "MARIA", "ELENA SOL", NameSuffix.NONE));
    }

    @Test
    void a_former_name_gives_its_surname_however_it_is_written() {
        ParsedName now = parsed("Reyes", "Catherine", "Marie", "");
        assertThat(FormerName.surname("Oyelaran", now)).isEqualTo("OYELARAN");
        assertThat(FormerName.surname("Oyelaran, Catherine", now)).isEqualTo("OYELARAN");
        assertThat(FormerName.surname("Catherine M. Oyelaran", now)).isEqualTo("OYELARAN");
        assertThat(FormerName.surname("Kate Oyelaran", now)).isEqualTo("OYELARAN");
        assertThat(FormerName.surname("De la Cruz", now)).isEqualTo("DELACRUZ");
        assertThat(FormerName.surname("Reyes", now)).isEmpty();
    }

    @Test
    void nicknames_are_kin_both_ways_and_through_the_formal_name() {
        assertThat(Nicknames.kin("BOB", "ROBERT")).isTrue();
        assertThat(Nicknames.kin("WILLIAM", "BILL")).isTrue();
        assertThat(Nicknames.kin("KATE", "KATIE")).isTrue();
        assertThat(Nicknames.kin("PEPE", "JOSE")).isTrue();
        assertThat(Nicknames.kin("ROBERT", "ROBERT")).isFalse();
        assertThat(Nicknames.kin("ROBERT", "WILLIAM")).isFalse();
    }

    private static ParsedName parsed(String last, String first, String middle, String suffix) {
        return ParsedName.of(new PersonName(last, first, middle, suffix));
    }
}
