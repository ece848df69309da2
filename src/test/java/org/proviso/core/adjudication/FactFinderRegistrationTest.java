package org.proviso.core.adjudication;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.proviso.core.RegistrationChannel;
import org.proviso.core.RollStatus;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.VoterIdentityFact;
import org.proviso.core.adjudication.finding.DateWords;
import org.proviso.core.adjudication.finding.Link;
import org.proviso.core.calendar.ClosedDayRule;
import org.proviso.core.calendar.DeadlineAnchor;
import org.proviso.core.calendar.DeadlineOffset;
import org.proviso.core.calendar.DeadlineRule;
import org.proviso.core.calendar.TimeOfDay;
import org.proviso.core.rules.Basis;
import org.proviso.core.rules.RuleValue;
import org.proviso.core.rules.Rules;
import org.proviso.core.rules.StateRules;

/**
 * The example state closes registration on October 19, 2026 in person and online; a mailed form must bear a postmark of
 * October 5 (the 4th is a Sunday) and arrive by October 14.
 */
class FactFinderRegistrationTest {

    private final SmallCase small = new SmallCase();

    @ParameterizedTest
    @CsvSource({
        "IN_PERSON, 2026-10-19, , in_time",
        "IN_PERSON, 2026-10-20, , late",
        "AGENCY, 2026-10-19, , in_time",
        "MOTOR_VEHICLE, 2026-10-20, , late",
        "DRIVE, 2026-10-19, , in_time",
        "ONLINE, 2026-10-19, , in_time",
        "ONLINE, 2026-10-20, , late",
        "MAIL, 2026-10-05, 2026-10-14, in_time",
        "MAIL, 2026-10-06, 2026-10-08, late",
        "MAIL, 2026-10-05, 2026-10-15, late",
        "MAIL, 2026-10-05, , in_time",
        ", 2026-10-05, , in_time",
        ", 2026-10-06, , unknown",
        ", 2026-10-20, , unknown",
        "ONLINE, , , unknown",
        "SAME_DAY, 2026-11-03, , same_day_accepted"
    })
    void tests_the_event_of_the_channel_to_the_day(
            RegistrationChannel channel, LocalDate registered, LocalDate received, String word) {
        small.voter.channel = channel;
        small.voter.registered = registered;
        small.voter.received = received;

        assertThat(small.word(Fact.REGISTRATION)).isEqualTo(word);
    }

    /** A state that takes late registrations at the office until October 29, and from nobody else. */
    @ParameterizedTest
    @CsvSource({
        "IN_PERSON, 2026-10-19, in_time",
        "IN_PERSON, 2026-10-29, in_time",
        "IN_PERSON, 2026-10-30, late",
        "DRIVE, 2026-10-29, late"
    })
    void gives_the_later_day_only_to_those_who_came_to_the_office(
            RegistrationChannel channel, LocalDate registered, String word) {
        small.pack.with(StateRules.REGISTER_LATE_IN_PERSON, daysBefore(5));
        small.voter.channel = channel;
        small.voter.registered = registered;
        assertThat(small.word(Fact.REGISTRATION)).isEqualTo(word);
    }

    @ParameterizedTest
    @CsvSource({"2026-10-19, in_time", "2026-10-20, unknown"})
    void asks_for_the_later_day_only_after_the_ordinary_one(LocalDate registered, String word) {
        small.pack.with(StateRules.REGISTER_LATE_IN_PERSON, new RuleValue.Unknown(), Basis.UNKNOWN);
        small.voter.registered = registered;
        assertThat(small.word(Fact.REGISTRATION)).isEqualTo(word);
    }

    private static RuleValue daysBefore(int days) {
        return new RuleValue.Dated(new DeadlineRule(
                DeadlineAnchor.ELECTION_DAY,
                new DeadlineOffset.Days(-days),
                TimeOfDay.parse("17:00").orElseThrow(),
                ClosedDayRule.SAME_DAY));
    }

    @Test
    void says_which_day_was_missed() {
        small.voter.registered = LocalDate.of(2026, 10, 20);
        assertThat(small.evidence(Fact.REGISTRATION))
                .isEqualTo("Registered on 10/20/2026 in person; the last day was 10/19/2026 (15 days before election"
                        + " day, close of business; if closed, the next open day).");
        small.voter.channel = RegistrationChannel.MAIL;
        small.voter.registered = LocalDate.of(2026, 10, 1);
        small.voter.received = LocalDate.of(2026, 10, 30);
        assertThat(small.evidence(Fact.REGISTRATION))
                .startsWith("The application arrived on 10/30/2026 by mail; the last day was 10/14/2026");
    }

    @ParameterizedTest
    @EnumSource(value = RegistrationChannel.class)
    void names_the_channel_in_the_evidence(RegistrationChannel channel) {
        small.voter.channel = channel;
        String words = small.evidence(Fact.REGISTRATION);
        assertThat(words).isNotBlank().doesNotContain("null");
    }

    @Test
    void calls_nobody_late_by_a_remembered_or_missing_deadline() {
        small.voter.registered = LocalDate.of(2026, 10, 20);
        small.pack.fromMemory(Rules.REGISTER_IN_PERSON);
        assertThat(small.word(Fact.REGISTRATION)).isEqualTo("unknown");
        assertThat(small.evidence(Fact.REGISTRATION)).contains("the office must sign a county ruling");

        small.pack.without(Rules.REGISTER_IN_PERSON);
        assertThat(small.word(Fact.REGISTRATION)).isEqualTo("unknown");
    }

    /** 52 USC 20507(d): an inactive voter is registered. */
    @Test
    void takes_an_inactive_voter_for_registered() {
        small.voter.status = RollStatus.INACTIVE;
        assertThat(small.word(Fact.REGISTRATION)).isEqualTo("inactive");
        small.voter.registered = LocalDate.of(2026, 10, 20);
        assertThat(small.word(Fact.REGISTRATION)).isEqualTo("late");
    }

    @ParameterizedTest
    @CsvSource({"2026-11-02, cancelled", "2026-11-03, cancelled", "2026-11-04, in_time", ", cancelled"})
    void counts_a_registration_cancelled_only_after_election_day(LocalDate cancelled, String word) {
        small.voter.status = RollStatus.CANCELLED;
        small.voter.statusOn = cancelled;
        small.voter.statusReason = "moved_away";

        assertThat(small.word(Fact.REGISTRATION)).isEqualTo(word);
        if (word.equals("cancelled")) {
            String on = cancelled == null ? "" : " on " + DateWords.date(cancelled);
            assertThat(small.evidence(Fact.REGISTRATION))
                    .isEqualTo("The registration was cancelled" + on + " (moved away).");
        }
    }

    @ParameterizedTest
    @CsvSource({"IN_PERSON, pending", "MAIL, pending", "SAME_DAY, same_day_pending", ", pending"})
    void keeps_a_registration_that_was_never_finished_apart(RegistrationChannel channel, String word) {
        small.voter.status = RollStatus.PENDING;
        small.voter.channel = channel;
        assertThat(small.word(Fact.REGISTRATION)).isEqualTo(word);
    }

    @ParameterizedTest
    @CsvSource({"NONE_FITS, not_in_file", "NOT_ON_ROLL, not_found_after_search", "SEVERAL_FIT, unknown"})
    void tells_a_record_that_is_missing_from_one_not_found_after_a_search(VoterIdentityFact identity, String word) {
        small.link = new Link(identity, null, 0, List.of());
        assertThat(small.word(Fact.REGISTRATION)).isEqualTo(word);
    }

    @Test
    void asks_for_no_registration_where_the_law_needs_none() {
        small.noVoter();
        small.pack.flag(Rules.REGISTRATION_NEEDED, false);
        assertThat(small.word(Fact.REGISTRATION)).isEqualTo("none_needed");
        small.pack.without(Rules.REGISTRATION_NEEDED);
        assertThat(small.word(Fact.REGISTRATION)).isEqualTo("not_in_file");
    }

    /** 18 on election day is of age (Amendment XXVI). */
    @ParameterizedTest
    @CsvSource({"2008-11-03, nothing_known", "2008-11-04, not_of_age", "1900-01-01, nothing_known", ", nothing_known"})
    void knows_who_is_under_age(LocalDate born, String word) {
        small.voter.born = born;
        assertThat(small.word(Fact.ELIGIBILITY)).isEqualTo(word);
    }
}
