package org.proviso.core.adjudication;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.proviso.core.CourtOrder;
import org.proviso.core.Election;
import org.proviso.core.Envelope;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.YesNo;
import org.proviso.core.adjudication.facts.Fact;

/** The polls close at 7 pm. */
class FactFinderVoteTimeTest {

    private final SmallCase small = new SmallCase();

    @ParameterizedTest
    @CsvSource({
        "2026-11-03T19:00, UNKNOWN, NO, within_hours",
        "2026-11-03T19:01, UNKNOWN, NO, unknown",
        "2026-11-03T19:01, NO, NO, after_close",
        "2026-11-03T19:01, YES, NO, in_line_at_close",
        "2026-11-03T19:01, YES, YES, in_line_at_close",
        ", UNKNOWN, NO, unknown",
        "2026-11-03T19:01, UNKNOWN, YES, unknown"
    })
    void weighs_the_hour_without_any_order(LocalDateTime at, YesNo inLine, YesNo extended, String word) {
        cast(at, inLine, extended);
        assertThat(small.word(Fact.VOTE_TIME)).isEqualTo(word);
    }

    @ParameterizedTest
    @CsvSource({
        "2026-11-03T19:01, NO, YES, extended_in_force",
        "2026-11-03T19:01, UNKNOWN, NO, extended_in_force",
        "2026-11-03T20:30, NO, YES, extended_in_force",
        "2026-11-03T20:31, NO, YES, after_close",
        ", NO, YES, extended_in_force",
        "2026-11-03T18:00, NO, NO, within_hours",
        "2026-11-03T19:01, YES, YES, in_line_at_close"
    })
    void weighs_the_hour_under_an_order_until_half_past_eight(
            LocalDateTime at, YesNo inLine, YesNo extended, String word) {
        extendedUntil(LocalDateTime.of(2026, 11, 3, 20, 30), CourtOrder.Status.IN_FORCE);
        cast(at, inLine, extended);
        assertThat(small.word(Fact.VOTE_TIME)).isEqualTo(word);
    }

    @ParameterizedTest
    @EnumSource(CourtOrder.Status.class)
    void knows_whether_the_order_still_stands(CourtOrder.Status standing) {
        extendedUntil(null, standing);
        cast(LocalDateTime.of(2026, 11, 3, 21, 0), YesNo.NO, YesNo.YES);
        assertThat(small.word(Fact.VOTE_TIME)).isEqualTo("extended_" + standing.code());
    }

    @Test
    void lets_an_order_in_force_go_before_an_earlier_one_that_was_set_aside() {
        LocalDateTime nine = LocalDateTime.of(2026, 11, 3, 21, 0);
        small.records.election = SmallElection.of(
                Election.Kind.GENERAL,
                order(nine, CourtOrder.Status.SET_ASIDE, Set.of()),
                order(nine, CourtOrder.Status.PENDING, Set.of()),
                order(nine, CourtOrder.Status.IN_FORCE, Set.of()));
        cast(nine, YesNo.NO, YesNo.YES);
        assertThat(small.word(Fact.VOTE_TIME)).isEqualTo("extended_in_force");
    }

    @Test
    void applies_an_order_about_named_envelopes_to_those_alone() {
        small.records.election = SmallElection.of(
                Election.Kind.GENERAL, order(null, CourtOrder.Status.FINAL, Set.of(new EnvelopeNumber("E-7"))));
        cast(LocalDateTime.of(2026, 11, 3, 21, 0), YesNo.NO, YesNo.YES);
        assertThat(small.word(Fact.VOTE_TIME)).isEqualTo("unknown");
        small.envelope.number = "E-7";
        assertThat(small.word(Fact.VOTE_TIME)).isEqualTo("extended_final");
    }

    @Test
    void asks_no_hour_of_a_mail_ballot_without_identification() {
        small.envelope.source = Envelope.Source.MAIL_WITHOUT_ID;
        small.envelope.at = null;
        assertThat(small.word(Fact.VOTE_TIME)).isEqualTo("within_hours");
    }

    private void cast(LocalDateTime at, YesNo inLine, YesNo extended) {
        small.envelope.at = at;
        small.envelope.inLine = inLine;
        small.envelope.extended = extended;
    }

    private void extendedUntil(LocalDateTime until, CourtOrder.Status standing) {
        small.records.election = SmallElection.of(Election.Kind.GENERAL, order(until, standing, Set.of()));
    }

    private static CourtOrder order(LocalDateTime until, CourtOrder.Status standing, Set<EnvelopeNumber> envelopes) {
        return new CourtOrder(
                CourtOrder.Kind.EXTEND,
                "District Court",
                LocalDate.of(2026, 11, 3),
                "county",
                standing,
                until,
                envelopes);
    }
}
