package org.proviso.core.adjudication.questions;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.proviso.core.contests.ContestPolicy;
import org.proviso.core.rules.Basis;
import org.proviso.core.rules.ChangedPack;
import org.proviso.core.rules.Consequence;
import org.proviso.core.rules.Consequence.Effect;
import org.proviso.core.rules.Reason;
import org.proviso.core.rules.ResolvedPack;
import org.proviso.core.rules.Rule;
import org.proviso.core.rules.RuleValue;
import org.proviso.core.rules.Rules;
import org.proviso.core.rules.StateRules;

/** Answers that a pack turns: the same fact under another value of its rule, and under none. */
class RuleVariantsTest {

    @ParameterizedTest
    @CsvSource({
        "mail.returned, wait_for_its_decision, already_voted.mail_ballot, mail_ballots=returned, open",
        "mail.returned, stands_in_the_way, already_voted.mail_ballot, mail_ballots=returned, reject: mail_ballot_returned",
        "registration.same_day, counts_when_accepted, registration.in_time, registration=same_day_accepted, clear",
        "registration.same_day, counts_when_accepted, registration.in_time, registration=same_day_pending, open",
        "extended_hours.order_pending, count_apart, anything_else.hours, vote_time=extended_pending, clear",
        "signature.no_exemplar, accepted, signature.agrees, signature_comparison=no_exemplar, clear",
        "mail.returned, gives_way, already_voted.mail_ballot, mail_ballots=returned, clear",
        "mail.rejected, stands_in_the_way, already_voted.mail_ballot, mail_ballots=rejected, reject: mail_ballot_returned",
        "mail.rejected, leaves_the_way_free, already_voted.mail_ballot, mail_ballots=rejected, clear",
        "mail.rejected, leaves_the_way_free, already_voted.mail_ballot, mail_ballots=rejected+outstanding, open; expected clear",
        "mail.late, stands_in_the_way, already_voted.mail_ballot, mail_ballots=late, reject: mail_ballot_returned",
        "registration.same_day, counts_for_president, registration.in_time, registration=same_day_accepted, open",
        "provisional.issued, not_issued, envelope.condition, envelope=sealed, open",
        "provisional.issued, issued, envelope.condition, envelope=sealed, clear",
        "signature.variant, accepted, signature.agrees, signature_comparison=variant, clear",
        "signature.variant, person_decides, signature.agrees, signature_comparison=variant, open",
        "signature.variant, not_accepted, signature.agrees, signature_comparison=variant, open",
        "signature.mark, no_witness_needed, envelope.signed, voter_signature=mark_not_witnessed, clear",
        "signature.mark, witness_needed, envelope.signed, voter_signature=mark_witnessed, clear",
        "signature.power_of_attorney, accepted, envelope.signed, voter_signature=power_of_attorney, clear",
        "signature.power_of_attorney, person_decides, envelope.signed, voter_signature=power_of_attorney, open",
        "prevails.two_envelopes, person_decides, already_voted.other_envelope, other_envelope=later_pending, open",
        "prevails.two_envelopes, last_cast, already_voted.other_envelope, other_envelope=earlier_pending, open; expected clear",
        "prevails.two_envelopes, first_cast, already_voted.other_envelope, other_envelope=later_pending, open; expected clear"
    })
    void turns_with_the_word_of_the_rule(String rule, String word, String question, String facts, String answer) {
        ResolvedPack pack = example()
                .word(rule(rule), word)
                .follows(Reason.MAIL_BALLOT_RETURNED, new Consequence(Effect.REJECT, null, null))
                .resolved();
        assertThat(Asking.of(question, facts, pack)).isEqualTo(answer);
    }

    @ParameterizedTest
    @CsvSource({
        "mail.returned, already_voted.mail_ballot, mail_ballots=returned",
        "mail.receipt, already_voted.mail_ballot, mail_ballots=outstanding",
        "registration.same_day, registration.in_time, registration=same_day_accepted",
        "extended_hours.order_pending, anything_else.hours, vote_time=extended_pending",
        "signature.compared, signature.agrees, signature_comparison=agrees",
        "signature.no_exemplar, signature.agrees, signature_comparison=no_exemplar",
        "consequence.voted_in_person, already_voted.check_in, check_in=voted",
        "cure.identification, identification.met, identification=missing"
    })
    void stays_open_where_nobody_could_source_the_rule(String rule, String question, String facts) {
        ResolvedPack pack = example().without(rule(rule)).resolved();
        AskStatus clock = rule.startsWith("cure.") ? AskStatus.NOT_SETTLED : AskStatus.RUNNING;
        Answer answer = Asking.answer(question, facts, new QuestionContext(pack, new FixedClocks(clock, false)));

        assertThat(answer).isInstanceOf(Answer.Open.class);
        assertThat(answer.words()).contains("no source settles " + rule(rule).meaning(), "county ruling");
        assertThat(answer.restsOn()).contains(pack.of(rule(rule)));
    }

    @ParameterizedTest
    @CsvSource({
        "signature.mark, not_accepted, envelope.signed, voter_signature=mark_witnessed, affirmation_not_signed",
        "signature.mark, not_accepted, envelope.signed, voter_signature=mark_not_witnessed, affirmation_not_signed",
        "signature.power_of_attorney, not_accepted, envelope.signed, voter_signature=power_of_attorney, affirmation_not_signed",
    })
    void stands_in_the_way_where_the_state_does_not_accept_it(
            String rule, String word, String question, String facts, String reason) {
        ResolvedPack pack = example().word(rule(rule), word).resolved();
        assertThat(Asking.of(question, facts, pack)).endsWith(": " + reason);
    }

    /** A rule that only some states have: silence means that there is none, unknown that nobody could find out. */
    @ParameterizedTest
    @CsvSource({
        "mail.rejected, already_voted.mail_ballot, mail_ballots=rejected",
        "mail.late, already_voted.mail_ballot, mail_ballots=late",
        "signature.mark, envelope.signed, voter_signature=mark_not_witnessed",
        "signature.power_of_attorney, envelope.signed, voter_signature=power_of_attorney",
        "registration.proof_instead, registration.in_time, registration=proved_instead",
        "identification.signature_instead, identification.met, identification=missing",
        "prevails.two_envelopes, already_voted.other_envelope, other_envelope=later_pending"
    })
    void opens_only_the_case_that_turns_on_an_unknown_rule(String rule, String question, String facts) {
        ResolvedPack unknown = example()
                .with(rule(rule), new RuleValue.Unknown(), Basis.UNKNOWN)
                .resolved();
        Answer answer =
                Asking.answer(question, facts, new QuestionContext(unknown, new FixedClocks(AskStatus.RUNNING, false)));
        assertThat(answer).isInstanceOf(Answer.Open.class);
        assertThat(answer.words()).contains("county ruling");
        assertThat(answer.restsOn()).contains(unknown.of(rule(rule)));
    }

    @Test
    void takes_proof_for_a_missing_record_and_a_signature_for_identification_where_the_law_does() {
        ResolvedPack pack = example()
                .flag(StateRules.PROOF_INSTEAD, true)
                .flag(StateRules.SIGNATURE_FOR_ID, true)
                .resolved();
        assertThat(Asking.of("registration.in_time", "registration=proved_instead", pack))
                .isEqualTo("clear");
        assertThat(Asking.of("identification.met", "identification=missing", pack))
                .isEqualTo("clear");
        ResolvedPack notCompared = example()
                .flag(StateRules.SIGNATURE_FOR_ID, true)
                .without(Rules.SIGNATURE_COMPARED)
                .resolved();
        assertThat(Asking.of("identification.met", "identification=missing", notCompared))
                .isEqualTo("open");
    }

    @Test
    void tells_a_sworn_reason_and_another_district_apart_only_where_the_law_does() {
        Consequence reject = new Consequence(Effect.REJECT, null, null);
        Consequence part = new Consequence(Effect.IN_PART, ContestPolicy.SHARED_CONTESTS, null);
        ResolvedPack pack = example()
                .follows(Reason.WRONG_STYLE, reject)
                .follows(Reason.WRONG_STYLE_OTHER_DISTRICT, reject)
                .follows(Reason.WRONG_STYLE_EXCUSED, part)
                .resolved();
        String wrong = "ballot=other_style place=other_place late_excuse=";
        assertThat(Asking.of("ballot.style", wrong + "not_sworn", pack)).isEqualTo("reject: wrong_style");
        assertThat(Asking.of("ballot.style", wrong + "sworn", pack))
                .isEqualTo("in_part shared_contests: wrong_style_excused");
        assertThat(Asking.of("ballot.style", wrong + "unknown", pack)).isEqualTo("open");
        assertThat(Asking.of("ballot.style", "ballot=other_style place=other_district late_excuse=not_sworn", pack))
                .isEqualTo("reject: wrong_style_other_district");
    }

    @Test
    void refuses_a_mail_ballot_that_came_back_only_by_a_rule_that_somebody_read() {
        ResolvedPack pack = example()
                .with(Rules.MAIL_RETURNED, new RuleValue.Word("gives_way"), Basis.MEMORY)
                .resolved();
        assertThat(Asking.of("already_voted.mail_ballot", "mail_ballots=returned", pack))
                .isEqualTo("open");
    }

    @Test
    void waits_for_a_mail_ballot_only_until_its_deadline() {
        QuestionContext passed = new QuestionContext(example().resolved(), new FixedClocks(AskStatus.RUNNING, true));
        assertThat(Asking.answer("already_voted.mail_ballot", "mail_ballots=outstanding", passed))
                .isInstanceOf(Answer.Clear.class);
    }

    @Test
    void waits_for_no_mail_ballot_where_the_mail_desk_hears_who_counted() {
        ResolvedPack pack =
                example().flag(Rules.COUNTED_LIST_TO_MAIL_DESK, true).resolved();
        assertThat(Asking.of("already_voted.mail_ballot", "mail_ballots=outstanding", pack))
                .isEqualTo("clear");
    }

    @Test
    void compares_no_signature_where_the_law_does_not() {
        ResolvedPack pack = example().flag(Rules.SIGNATURE_COMPARED, false).resolved();
        assertThat(Asking.of("signature.agrees", "signature_comparison=differs_by_two", pack))
                .isEqualTo("clear");
    }

    /** Not yet compared is nothing to wait for only where a rule that is known says that nobody compares. */
    @Test
    void waits_for_a_comparison_unless_the_law_is_known_not_to_compare() {
        String notCompared = "signature_comparison=unknown";
        assertThat(Asking.of("signature.agrees", notCompared, example().resolved()))
                .isEqualTo("open");
        assertThat(Asking.of(
                        "signature.agrees",
                        notCompared,
                        example().without(Rules.SIGNATURE_COMPARED).resolved()))
                .isEqualTo("open");
        assertThat(Asking.of(
                        "signature.agrees",
                        notCompared,
                        example().flag(Rules.SIGNATURE_COMPARED, false).resolved()))
                .isEqualTo("clear");
    }

    /** All ways lead to the same, but one of them only from memory: the office must rule before a contest is lost. */
    @Test
    void rests_on_the_least_firm_of_the_ways_to_another_style_while_nobody_knows_which_it_was() {
        ChangedPack pack = example();
        Consequence part = new Consequence(Effect.IN_PART, ContestPolicy.SHARED_CONTESTS, null);
        for (Reason way :
                new Reason[] {Reason.WRONG_STYLE, Reason.WRONG_STYLE_RIGHT_PLACE, Reason.WRONG_STYLE_BY_OFFICIAL}) {
            pack.follows(way, part);
        }
        String unknown = "ballot=other_style place=unknown";
        assertThat(Asking.of("ballot.style", unknown, pack.resolved()))
                .isEqualTo("in_part shared_contests: wrong_style");
        pack.fromMemory(Rule.consequence(Reason.WRONG_STYLE_BY_OFFICIAL));
        assertThat(Asking.of("ballot.style", unknown, pack.resolved()))
                .isEqualTo("open; expected in_part shared_contests: wrong_style_by_official");
    }

    @Test
    void must_know_how_a_voter_came_to_another_style_where_the_law_tells_the_ways_apart() {
        Consequence part = new Consequence(Effect.IN_PART, ContestPolicy.SHARED_CONTESTS, null);
        for (Reason strict : new Reason[] {Reason.WRONG_STYLE, Reason.WRONG_STYLE_RIGHT_PLACE}) {
            ResolvedPack pack = example()
                    .follows(strict, new Consequence(Effect.REJECT, null, null))
                    .follows(Reason.WRONG_STYLE_BY_OFFICIAL, part)
                    .resolved();
            assertThat(Asking.of("ballot.style", "ballot=other_style place=unknown", pack))
                    .isEqualTo("open");
            assertThat(Asking.of("ballot.style", "ballot=other_style official_error=unknown", pack))
                    .isEqualTo("open");
        }
        ResolvedPack lenient = example()
                .follows(Reason.WRONG_STYLE_BY_OFFICIAL, new Consequence(Effect.NONE, null, null))
                .resolved();
        assertThat(Asking.of("ballot.style", "ballot=other_style place=unknown", lenient))
                .isEqualTo("open");
    }

    private static ChangedPack example() {
        return ChangedPack.of("example");
    }

    private static Rule rule(String key) {
        return Rule.find(key).orElseThrow();
    }
}
