package org.proviso.core.adjudication;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDateTime;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.proviso.core.Envelope;
import org.proviso.core.YesNo;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.SignatureComparisonFact;
import org.proviso.core.adjudication.finding.CureEvidence;
import org.proviso.core.adjudication.finding.Evidence;
import org.proviso.core.adjudication.finding.EvidenceSource;
import org.proviso.core.adjudication.finding.RecordedFact;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.core.calendar.ClosedDayRule;
import org.proviso.core.calendar.DeadlineAnchor;
import org.proviso.core.calendar.DeadlineOffset;
import org.proviso.core.calendar.DeadlineRule;
import org.proviso.core.calendar.TimeOfDay;
import org.proviso.core.rules.Ask;
import org.proviso.core.rules.ChangedPack;
import org.proviso.core.rules.Rule;
import org.proviso.core.rules.RuleValue;

/** Identification may be brought until November 10 at 5 pm, a signature until the 12th (the 11th is a holiday). */
class FactFinderCureTest {

    private static final LocalDateTime LONG_AFTER = LocalDateTime.of(2026, 12, 1, 9, 0);

    private final SmallCase small = new SmallCase();

    @ParameterizedTest
    @CsvSource({
        "2026-11-10T17:00, 2026-11-10T16:59, supplied_in_time",
        "2026-11-10T17:00, 2026-12-01T09:00, supplied_in_time",
        "2026-11-10T17:01, 2026-11-10T17:01, supplied_late",
        "2026-11-10T17:01, 2026-11-04T09:00, supplied_late"
    })
    void goes_by_the_stamp_and_never_by_the_keying(LocalDateTime received, LocalDateTime keyed, String word) {
        small.envelope.idShown = YesNo.NO;
        brought(Ask.IDENTIFICATION, received, keyed);

        assertThat(small.word(Fact.IDENTIFICATION)).isEqualTo(word);
        Evidence evidence = small.presumed().evidence(Fact.IDENTIFICATION).get(1);
        assertThat(evidence.receivedAt()).isEqualTo(received);
        assertThat(evidence.recordedAt()).isEqualTo(keyed);
        assertThat(evidence.words()).contains("a copy, stamped 11/10/2026");
    }

    @Test
    void forgets_nothing_that_came_in_time_for_something_that_came_late() {
        small.envelope.idShown = YesNo.NO;
        brought(Ask.IDENTIFICATION, LONG_AFTER, LONG_AFTER);
        assertThat(small.word(Fact.IDENTIFICATION)).isEqualTo("supplied_late");
        brought(Ask.IDENTIFICATION, LocalDateTime.of(2026, 11, 6, 9, 0), LONG_AFTER);
        brought(Ask.IDENTIFICATION, LONG_AFTER, LONG_AFTER);
        assertThat(small.word(Fact.IDENTIFICATION)).isEqualTo("supplied_in_time");
    }

    @Test
    void takes_what_was_brought_for_what_was_asked_only() {
        small.envelope.idShown = YesNo.NO;
        brought(Ask.SIGNATURE, LocalDateTime.of(2026, 11, 6, 9, 0), LONG_AFTER);
        assertThat(small.word(Fact.IDENTIFICATION)).isEqualTo("missing");
    }

    @ParameterizedTest
    @CsvSource({
        "NO, 2026-11-12T17:00, signed_later_in_time",
        "NO, 2026-11-12T17:01, signed_later_late",
        "MARK, 2026-11-12T17:00, signed_later_in_time",
        "YES, 2026-11-12T17:01, signed"
    })
    void lets_a_missing_signature_be_given_later(Envelope.VoterSignature signed, LocalDateTime received, String word) {
        small.envelope.signed = signed;
        small.envelope.witness = YesNo.NO;
        brought(Ask.SIGNATURE, received, LONG_AFTER);
        assertThat(small.word(Fact.VOTER_SIGNATURE)).isEqualTo(word);
    }

    /** Two people found that it differs; the voter's own word counts while it comes in time. */
    @ParameterizedTest
    @CsvSource({
        "DIFFERS_BY_TWO, 2026-11-12T17:00, confirmed_by_voter",
        "DIFFERS_BY_TWO, 2026-11-12T17:01, differs_by_two",
        "AGREES, 2026-11-12T17:00, agrees"
    })
    void lets_the_voter_confirm_a_signature_that_two_people_found_different(
            SignatureComparisonFact found, LocalDateTime received, String word) {
        small.records.recorded.add(new RecordedFact(
                Fact.SIGNATURE_COMPARISON, Set.of(found), Evidence.of(EvidenceSource.PERSON, "Compared.")));
        brought(Ask.SIGNATURE_DIFFERENCE, received, LONG_AFTER);
        assertThat(small.word(Fact.SIGNATURE_COMPARISON)).isEqualTo(word);
    }

    @Test
    void weighs_nothing_by_a_deadline_nobody_could_source() {
        small.envelope.idShown = YesNo.NO;
        small.pack.without(Rule.cure(Ask.IDENTIFICATION));
        brought(Ask.IDENTIFICATION, LocalDateTime.of(2026, 11, 4, 9, 0), LONG_AFTER);
        assertThat(small.word(Fact.IDENTIFICATION)).isEqualTo("missing");
        assertThat(small.report(LONG_AFTER).recommendation()).isEqualTo(Recommendation.RESEARCH);
    }

    /** Three days after the notice, which went out on the 5th: what was brought on the 6th is in time. */
    @ParameterizedTest
    @CsvSource({"2026-11-06T09:00, supplied_in_time", "2026-11-08T17:01, supplied_late"})
    void counts_from_the_notice_where_the_law_does(LocalDateTime received, String word) {
        small.envelope.idShown = YesNo.NO;
        small.envelope.signed = Envelope.VoterSignature.NO;
        afterNotice(small.pack, Ask.IDENTIFICATION);
        afterNotice(small.pack, Ask.SIGNATURE);
        small.records.notices.put(Ask.IDENTIFICATION, LocalDateTime.of(2026, 11, 5, 10, 0));
        small.records.notices.put(Ask.SIGNATURE, LocalDateTime.of(2026, 11, 5, 10, 0));
        brought(Ask.IDENTIFICATION, received, LONG_AFTER);
        brought(Ask.SIGNATURE, received, LONG_AFTER);

        assertThat(small.word(Fact.IDENTIFICATION)).isEqualTo(word);
        assertThat(small.word(Fact.VOTER_SIGNATURE)).isEqualTo(word.replace("supplied", "signed_later"));
    }

    /** The voter has until the board meets: what comes before a meeting is called is in time. */
    @Test
    void is_in_time_before_the_boards_meeting_is_called_whatever_the_notice_says() {
        small.envelope.idShown = YesNo.NO;
        small.pack.with(
                Rule.cure(Ask.IDENTIFICATION),
                new RuleValue.Dated(new DeadlineRule(
                        DeadlineAnchor.BOARD_MEETING,
                        new DeadlineOffset.Days(0),
                        TimeOfDay.THAT_HOUR,
                        ClosedDayRule.SAME_DAY)));
        small.records.notices.put(Ask.IDENTIFICATION, LocalDateTime.of(2026, 11, 5, 10, 0));
        brought(Ask.IDENTIFICATION, LONG_AFTER, LONG_AFTER);

        assertThat(small.word(Fact.IDENTIFICATION)).isEqualTo("supplied_in_time");
    }

    private static void afterNotice(ChangedPack pack, Ask ask) {
        pack.with(
                Rule.cure(ask),
                new RuleValue.Dated(new DeadlineRule(
                        DeadlineAnchor.NOTICE_SENT,
                        new DeadlineOffset.Days(3),
                        TimeOfDay.parse("17:00").orElseThrow(),
                        ClosedDayRule.SAME_DAY)));
    }

    private void brought(Ask ask, LocalDateTime received, LocalDateTime keyed) {
        small.records.cures.add(new CureEvidence(ask, received, keyed, "a copy"));
    }
}
