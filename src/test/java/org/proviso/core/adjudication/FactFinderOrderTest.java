package org.proviso.core.adjudication;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.proviso.core.CourtOrder;
import org.proviso.core.CourtOrder.Kind;
import org.proviso.core.CourtOrder.Status;
import org.proviso.core.Election;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.adjudication.facts.Fact;

/** The envelope is E-1. */
class FactFinderOrderTest {

    private final SmallCase small = new SmallCase();

    @ParameterizedTest
    @EnumSource(
            value = Kind.class,
            mode = EnumSource.Mode.EXCLUDE,
            names = {"EXTEND"})
    void finds_a_courts_order_about_this_envelope_only(Kind kind) {
        ordered(order(kind, Status.FINAL, new EnvelopeNumber("E-9")));
        assertThat(small.word(Fact.COURT_ORDER)).isEqualTo("none");
        assertThat(small.evidence(Fact.COURT_ORDER)).isEmpty();
        ordered(
                order(Kind.EXTEND, Status.FINAL, new EnvelopeNumber("E-1")),
                order(kind, Status.FINAL, new EnvelopeNumber("E-1")));
        assertThat(small.word(Fact.COURT_ORDER)).isEqualTo(kind.code());
        assertThat(small.evidence(Fact.COURT_ORDER)).isEqualTo("District Court, 11/05/2026: Ward 2");
    }

    @ParameterizedTest
    @CsvSource({"IN_FORCE, count", "FINAL, count", "PENDING, none", "SET_ASIDE, none"})
    void lets_only_an_order_that_stands_bind(Status standing, String word) {
        ordered(order(Kind.COUNT, standing, new EnvelopeNumber("E-1")));
        assertThat(small.word(Fact.COURT_ORDER)).isEqualTo(word);
    }

    @Test
    void shows_an_order_that_does_not_bind_beside_the_one_that_does() {
        ordered(
                order(Kind.REJECT, Status.SET_ASIDE, new EnvelopeNumber("E-1")),
                order(Kind.PRESERVE, Status.IN_FORCE, new EnvelopeNumber("E-1")));
        assertThat(small.word(Fact.COURT_ORDER)).isEqualTo("preserve");
        assertThat(small.evidence(Fact.COURT_ORDER))
                .isEqualTo("District Court, 11/05/2026: Ward 2 (set aside, so it is not binding)"
                        + " District Court, 11/05/2026: Ward 2");
    }

    @ParameterizedTest
    @CsvSource({"HOLD, hold", "PRESERVE, preserve", "OPEN, none", "COUNT, none", "REJECT, none", "EXTEND, none"})
    void takes_an_order_that_names_no_envelope_for_one_about_all_only_where_it_keeps_them_safe(Kind kind, String word) {
        ordered(order(kind, Status.IN_FORCE));
        assertThat(small.word(Fact.COURT_ORDER)).isEqualTo(word);
    }

    @ParameterizedTest
    @CsvSource({"PRESERVE, HOLD, hold", "COUNT, HOLD, hold", "OPEN, REJECT, reject", "COUNT, OPEN, count"})
    void lets_a_hold_go_before_what_would_let_the_envelope_through(Kind first, Kind second, String word) {
        ordered(
                order(first, Status.IN_FORCE, new EnvelopeNumber("E-1")),
                order(second, Status.IN_FORCE, new EnvelopeNumber("E-1")));
        assertThat(small.word(Fact.COURT_ORDER)).isEqualTo(word);
    }

    @Test
    void leaves_orders_that_contradict_each_other_to_a_person() {
        ordered(
                order(Kind.COUNT, Status.IN_FORCE, new EnvelopeNumber("E-1")),
                order(Kind.REJECT, Status.FINAL, new EnvelopeNumber("E-1")));
        assertThat(small.word(Fact.COURT_ORDER)).isEqualTo("unknown");
    }

    private void ordered(CourtOrder... orders) {
        small.records.election = SmallElection.of(Election.Kind.GENERAL, orders);
    }

    private static CourtOrder order(Kind kind, Status standing, EnvelopeNumber... envelopeNos) {
        return new CourtOrder(
                kind, "District Court", LocalDate.of(2026, 11, 5), "Ward 2", standing, null, Set.of(envelopeNos));
    }
}
