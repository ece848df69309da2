package org.proviso.core.matching.index;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.proviso.core.VoterId;
import org.proviso.core.matching.SmallRoll;

class VoterLookupTest {

    private static final LocalDate BORN = LocalDate.of(1974, 3, 9);

    private final VoterLookup lookup = new VoterLookup(UpdatedRoll.of(SmallRoll.with(
            SmallRoll.entry("X-17", "O'Yelaran", "Catherine", "", "", BORN, "120400", "4821"),
            SmallRoll.entry("X-18", "Oyelaran", "Abel", "", "", LocalDate.of(1990, 1, 5), "120400", ""),
            SmallRoll.entry("X-19", "Oyelowo", "Zoe", "", "", LocalDate.of(1900, 1, 1), "77001", ""))));

    @Test
    void voters_are_found_by_the_beginning_of_a_name_in_the_order_of_names() {
        assertThat(lookup.named("oyel", "", 25))
                .containsExactly(new VoterId("X-18"), new VoterId("X-17"), new VoterId("X-19"));
        assertThat(lookup.named("OYEL", "", 2)).containsExactly(new VoterId("X-18"), new VoterId("X-17"));
        assertThat(lookup.named("o'yelaran", "cath", 25)).containsExactly(new VoterId("X-17"));
        assertThat(lookup.named("  ", "", 25)).isEmpty();
        assertThat(lookup.named("Zzz", "", 25)).isEmpty();
    }

    @Test
    void voters_are_found_by_birth_date_and_a_placeholder_is_none() {
        assertThat(lookup.born(BORN, 25)).contains(new VoterId("X-17"));
        assertThat(lookup.born(LocalDate.of(1900, 1, 1), 25)).isEmpty();
    }

    @Test
    void voters_are_found_by_address_and_by_street() {
        assertThat(lookup.at("120400 Quarry", 25)).containsExactly(new VoterId("X-18"), new VoterId("X-17"));
        assertThat(lookup.at("77001 n quarry street", 25)).containsExactly(new VoterId("X-19"));
        assertThat(lookup.at("77001 Sorrel", 25)).isEmpty();
        assertThat(lookup.at("", 25)).isEmpty();
    }

    @Test
    void voters_are_found_by_the_beginning_of_their_number() {
        assertThat(lookup.numbered("x-1", 25))
                .containsExactly(new VoterId("X-18"), new VoterId("X-17"), new VoterId("X-19"));
        assertThat(lookup.numbered("X-19", 25)).containsExactly(new VoterId("X-19"));
        assertThat(lookup.numbered("X-190", 25)).isEmpty();
        assertThat(lookup.numbered(" ", 25)).isEmpty();
    }
}
