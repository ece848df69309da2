package org.proviso.core.adjudication.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.proviso.core.rules.ChangedPack;
import org.proviso.core.rules.Reason;
import org.proviso.core.rules.ResolvedRule;
import org.proviso.core.rules.RulePack;
import org.proviso.files.PackText;
import org.proviso.files.packs.RulePacks;

class PackProofTest {

    private static final String TWICE =
            "A ballot never counts, in full or in part, alongside an accepted mail ballot, a vote"
                    + " at another location or in another county, or another envelope that counts.";
    private static final String IN_ORDER =
            "The time to cure ends by the decision deadline, and the decision deadline is no later than certification.";
    private static final String HAS_TEXT = "Every reason in the pack has a notice text and a survey heading.";
    private static final String REACHABLE = "Every reason in the pack can occur.";

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"us", "example"})
    void holds_for_the_bundled_packs(String name) {
        ProofReport report = proved(RulePacks.load(name));

        assertThat(report.violations()).isEmpty();
        assertThat(report.holds()).isTrue();
        assertThat(report.pack()).isEqualTo(name);
        assertThat(report.tuples()).isBetween(900, 1_300);
        assertThat(report.combinations()).isGreaterThan(500);
        assertThat(report.hash()).isEqualTo(ChangedPack.of(name).resolved().hash());
    }

    @Test
    void lists_what_needs_a_county_ruling() {
        assertThat(proved(RulePacks.load("example")).needRuling())
                .extracting(given -> given.rule().key())
                .containsExactly("reasons.order", "consequence.mail_ballot_returned");
        assertThat(proved(RulePacks.load("us")).needRuling())
                .extracting(ResolvedRule::rule)
                .extracting("key")
                .contains("consequence.voted_in_person", "registration.in_person")
                .doesNotContain("registration.bound_days", "cure.identification");
    }

    /** Each of the four ways to vote twice, let through by a rule that nobody read. */
    @ParameterizedTest
    @CsvSource({
        "mail_ballot_accepted, mail_ballots is accepted",
        "voted_in_person, check_in is voted",
        "voted_in_other_county, other_county is voted",
        "other_envelope_counted, other_envelope is counted"
    })
    void refuses_a_pack_that_lets_a_second_ballot_count_from_memory(String reason, String counterexample) {
        PackText pack =
                PackText.of("example").value("consequence." + reason, "none").basis("consequence." + reason, "memory");
        breaks(pack, TWICE, counterexample);
    }

    @Test
    void lets_a_second_ballot_count_in_part_by_no_rule_at_all() {
        breaks(
                PackText.of("example")
                        .value("consequence.voted_in_person", "{does: in_part, policy: federal_contests}"),
                TWICE,
                "\"Did the voter vote at another location?\" when check_in is voted");
    }

    @Test
    void takes_the_law_at_its_word_where_somebody_read_that_it_counts() {
        PackText pack = PackText.of("example").value("consequence.mail_ballot_accepted", "none");
        assertThat(proved(pack).violations()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "cure.identification | 11 | cure.identification ends on 11/1",
                "decision.by | 15 | decision.by ends on 11/",
                "certification.by | 9 | after certification.by on 11/1"
            })
    void refuses_a_pack_whose_deadlines_are_out_of_order(String rule, int days, String counterexample) {
        String value = "{days: " + days + ", after: election_day, time: \"17:00\", if_closed: next_open_day}";
        breaks(PackText.of("example").value(rule, value), IN_ORDER, counterexample);
    }

    @Test
    void refuses_a_reason_without_words_for_the_voter() {
        RulePack pack =
                ChangedPack.of("example").withoutText(Reason.DISQUALIFIED).pack();
        assertThat(proved(pack).violations()).contains(new Violation(HAS_TEXT, "disqualified has none"));
    }

    @Test
    void refuses_a_reason_that_cannot_come_about() {
        String unreachable = "  consequence.mail_ballot_returned:\n    - from: 2020-01-01\n      value: reject\n"
                + "      reference: {title: Code, year: 2020}\n      basis: invented\n      checked: 2026-11-25\n";
        String next = "  consequence.voted_in_person:\n";
        PackText returned = PackText.of("example").replace(next, unreachable + next);
        breaks(returned, REACHABLE, "no combination of facts leads to mail_ballot_returned");
    }

    @Test
    void refuses_a_pack_for_a_date_at_which_it_breaks_a_promise_though_not_today() {
        PackText pack = PackText.of("example")
                .inRule(
                        "consequence.mail_ballot_accepted",
                        "value: reject",
                        "value: none\n      reference: {title: Code, year: 2020}\n      basis: memory\n"
                                + "      checked: 2026-11-25\n    - from: 2024-01-01\n      value: reject");
        breaks(pack, TWICE, "mail_ballots is accepted");
    }

    @ParameterizedTest
    @ValueSource(strings = {"reject", "{does: reject, cure: signature}"})
    void keeps_the_promises_about_time_whatever_cures_a_missing_signature(String follows) {
        assertThat(proved(PackText.of("example").value("consequence.affirmation_not_signed", follows))
                        .violations())
                .isEmpty();
    }

    /** Then a voter who signs in time may be found different, and one who signs too late may not. */
    @Test
    void refuses_a_pack_that_makes_signing_in_time_worse_than_signing_too_late() {
        breaks(
                PackText.of("example").value("consequence.affirmation_not_signed", "none"),
                "Evidence provided in time is never worse for the voter than evidence provided late.",
                "voter_signature is signed_later_in_time (signed after voting, in time)");
    }

    @Test
    void holds_where_one_of_the_ways_to_another_style_is_only_remembered() {
        PackText pack = PackText.of("example").basis("consequence.wrong_style_by_official", "memory");
        assertThat(proved(pack).violations()).isEmpty();
    }

    private void breaks(PackText pack, String promise, String counterexample) {
        ProofReport report = proved(pack);
        assertThat(report.holds()).isFalse();
        assertThat(report.violations()).extracting(Violation::promise).contains(promise);
        assertThat(report.violations())
                .filteredOn(violation -> violation.promise().equals(promise))
                .first()
                .satisfies(violation -> assertThat(violation.counterexample())
                        .contains(counterexample)
                        .doesNotContain("Record["));
    }

    private ProofReport proved(PackText pack) {
        return proved(RulePacks.load(pack.in(folder).toString()));
    }

    private static ProofReport proved(RulePack pack) {
        return PackProof.proveForElection(pack, ChangedPack.ELECTION_DAY);
    }
}
