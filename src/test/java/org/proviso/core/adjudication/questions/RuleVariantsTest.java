package org.proviso.core.adjudication.questions;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.proviso.core.adjudication.Answer;
import org.proviso.core.adjudication.AskClock;
import org.proviso.core.adjudication.FixedClocks;
import org.proviso.core.adjudication.Setting;
import org.proviso.core.contests.ContestPolicy;
import org.proviso.core.rules.ChangedPack;
import org.proviso.core.rules.Consequence;
import org.proviso.core.rules.Consequence.Does;
import org.proviso.core.rules.Reason;
import org.proviso.core.rules.ResolvedPack;
import org.proviso.core.rules.Rule;
import org.proviso.core.rules.Rules;

/** Answers that a pack turns: the same fact under another value of its rule, and under none. */
class RuleVariantsTest {

    @ParameterizedTest
    @CsvSource({
        "mail.returned, wait_for_its_decision, already_voted.mail_ballot, mail_ballots=returned, open",
        "mail.returned, stands_in_the_way, already_voted.mail_ballot, mail_ballots=returned, reject: mail_ballot_returned",
        "registration.same_day, counts_when_accepted, registration.in_time, registration=same_day_accepted, clear",
        "registration.same_day, counts_when_accepted, registration.in_time, registration=same_day_pending, open",
        "extended_hours.order_pending, count_apart, anything_else.hours, vote_time=extended_pending, clear",
        "signature.no_exemplar, accepted, signature.agrees, signature_comparison=no_exemplar, clear"
    })
    void turns_with_the_word_of_the_rule(String rule, String word, String question, String facts, String answer) {
        ResolvedPack pack = example()
                .word(rule(rule), word)
                .follows(Reason.MAIL_BALLOT_RETURNED, new Consequence(Does.REJECT, null, null))
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
        AskClock clock = rule.startsWith("cure.") ? AskClock.NOT_SETTLED : AskClock.RUNNING;
        Answer answer = Asking.answer(question, facts, new Setting(pack, new FixedClocks(clock, false)));

        assertThat(answer).isInstanceOf(Answer.Open.class);
        assertThat(answer.words()).contains("no source says " + rule(rule).meaning(), "county ruling");
        assertThat(answer.restsOn()).contains(pack.of(rule(rule)));
    }

    @Test
    void waits_for_a_mail_ballot_only_until_its_deadline() {
        Setting passed = new Setting(example().resolved(), new FixedClocks(AskClock.RUNNING, true));
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

    @Test
    void must_know_how_a_voter_came_to_another_style_where_the_law_tells_the_ways_apart() {
        Consequence part = new Consequence(Does.IN_PART, ContestPolicy.SHARED_CONTESTS, null);
        for (Reason strict : new Reason[] {Reason.WRONG_STYLE, Reason.WRONG_STYLE_RIGHT_PLACE}) {
            ResolvedPack pack = example()
                    .follows(strict, new Consequence(Does.REJECT, null, null))
                    .follows(Reason.WRONG_STYLE_BY_OFFICIAL, part)
                    .resolved();
            assertThat(Asking.of("ballot.style", "ballot=other_style place=unknown", pack))
                    .isEqualTo("open");
            assertThat(Asking.of("ballot.style", "ballot=other_style official_error=unknown", pack))
                    .isEqualTo("open");
        }
        ResolvedPack lenient = example()
                .follows(Reason.WRONG_STYLE_BY_OFFICIAL, new Consequence(Does.NONE, null, null))
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
