package org.proviso.core;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CourtOrderTest {

    /** An order settles a case only where it says how and binds now (common practice). */
    @ParameterizedTest
    @CsvSource({
        "COUNT, IN_FORCE, true",
        "COUNT, FINAL, true",
        "COUNT, PENDING, false",
        "COUNT, SET_ASIDE, false",
        "REJECT, IN_FORCE, true",
        "REJECT, SET_ASIDE, false",
        "HOLD, IN_FORCE, false",
        "OPEN, FINAL, false",
        "EXTEND, IN_FORCE, false",
        "PRESERVE, FINAL, false"
    })
    void settles_an_envelope_that_it_names_where_it_says_how_and_binds(
            CourtOrder.Kind kind, CourtOrder.Status standing, boolean settles) {
        CourtOrder order = new CourtOrder(
                kind,
                "Superior Court",
                LocalDate.of(2026, 11, 5),
                "two envelopes",
                standing,
                null,
                Set.of(new EnvelopeNumber("E-1"), new EnvelopeNumber("E-2")));
        assertThat(order.settles(new EnvelopeNumber("E-1"))).isEqualTo(settles);
        assertThat(order.settles(new EnvelopeNumber("E-3")))
                .as("an envelope that it does not name")
                .isFalse();
    }
}
