package org.proviso.core.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.proviso.core.CountyRuling;
import org.proviso.files.packs.RulePacks;

class ResolvedPackTest {

    private static final ResolvedPack EXAMPLE = ChangedPack.of("example").resolved();

    @Test
    void has_the_same_hash_every_time_it_is_read() {
        assertThat(EXAMPLE.hash()).matches("[0-9a-f]{64}");
        assertThat(ChangedPack.of("example").resolved().hash()).isEqualTo(EXAMPLE.hash());
    }

    /** Assessments were kept under this one: a rule that joins the vocabulary leaves the hash of a silent pack alone. */
    @Test
    void keeps_its_hash_when_the_vocabulary_grows() {
        assertThat(EXAMPLE.hash()).isEqualTo("449451b250c95ac1e19e74aba67ef40f7db1b9ea534c505033ff7be9b44a248b");
        assertThat(ChangedPack.of("example")
                        .with(StateRules.QUORUM_COUNTS_RECUSED, new RuleValue.Flag(false))
                        .resolved()
                        .hash())
                .isNotEqualTo(EXAMPLE.hash());
    }

    @Test
    void has_another_hash_with_another_value_basis_ruling_or_date() {
        List<String> hashes = List.of(
                EXAMPLE.hash(),
                ChangedPack.of("example").word(Rules.MOVES, "either").resolved().hash(),
                ChangedPack.of("example")
                        .word(Rules.MOVES, "new_address")
                        .resolved()
                        .hash(),
                ChangedPack.of("example").fromMemory(Rules.MOVES).resolved().hash(),
                ChangedPack.of("example").without(Rules.MOVES).resolved().hash(),
                ChangedPack.of("example")
                        .resolved(new CountyRuling(
                                "moves.within_county", "", "A. Reyes", LocalDate.of(2026, 10, 1), "letter"))
                        .hash(),
                PackResolver.resolve(RulePacks.load("example"), LocalDate.of(2026, 11, 4), List.of())
                        .hash(),
                ChangedPack.of("us").resolved().hash());

        assertThat(hashes).doesNotHaveDuplicates();
    }

    /** 21082(a)(5)(B): the voter is told the reason; the survey asks for it by heading. */
    @ParameterizedTest
    @ValueSource(strings = {"us", "example"})
    void has_a_notice_text_and_a_survey_heading_for_every_reason(String name) {
        ResolvedPack pack = ChangedPack.of(name).resolved();

        assertThat(Reason.values())
                .allSatisfy(reason -> assertThat(pack.text(reason)).hasValueSatisfying(text -> {
                    assertThat(text.notice()).endsWith(".").hasSizeBetween(20, 120);
                    assertThat(text.survey()).isNotNull();
                }));
    }

    @Test
    void orders_every_reason_and_no_two_alike() {
        List<Integer> places =
                Arrays.stream(Reason.values()).map(EXAMPLE::precedence).toList();

        assertThat(places).doesNotHaveDuplicates();
        assertThat(EXAMPLE.precedence(Reason.NOT_REGISTERED)).isZero();
        // Not in the pack's list, so after all that are, in the order of the vocabulary.
        assertThat(EXAMPLE.precedence(Reason.CHALLENGE_SUSTAINED))
                .isGreaterThan(EXAMPLE.precedence(Reason.SIGNATURE_DIFFERS))
                .isLessThan(EXAMPLE.precedence(Reason.NOT_OF_AGE));
    }

    @Test
    void gives_what_a_rule_asks_for_and_nothing_of_another_kind() {
        assertThat(EXAMPLE.words(Rules.HOLIDAYS)).contains("thanksgiving").doesNotContain("columbus_day");
        assertThat(EXAMPLE.words(Rules.MOVES)).isEmpty();
        assertThat(EXAMPLE.word(Rules.HOLIDAYS)).isEmpty();
        assertThat(EXAMPLE.deadline(Rules.MOVES)).isEmpty();
        assertThat(EXAMPLE.isYes(Rules.MOVES)).isFalse();
        assertThat(EXAMPLE.isYes(Rules.COUNTED_LIST_TO_MAIL_DESK)).isFalse();
        assertThat(EXAMPLE.consequence(Reason.MAIL_BALLOT_RETURNED)).isEmpty();
        assertThat(EXAMPLE.all()).hasSameSizeAs(Rule.all());
    }

    @Test
    void finds_every_rule_by_its_key() {
        assertThat(Rule.all())
                .allSatisfy(rule -> assertThat(Rule.find(rule.key())).contains(rule));
        assertThat(Rule.find("consequence.no_such_thing")).isEmpty();
        assertThat(Rule.all()).extracting(Rule::key).doesNotHaveDuplicates();
    }

    @Test
    void spells_each_kind_of_value_in_one_way() {
        assertThat(EXAMPLE.of(Rules.SIGNATURE_ACCEPTED_BY).value().spelled()).isEqualTo("1");
        assertThat(EXAMPLE.of(Rules.OFFICE_CLOSES).value().spelled()).isEqualTo("17:00");
        assertThat(EXAMPLE.of(Rules.GATE_OPEN).value().spelled()).isEqualTo("none");
        assertThat(EXAMPLE.of(Rules.BURDEN).value().spelled()).isEqualTo("counts_unless_shown_otherwise");
        assertThat(EXAMPLE.of(Rules.REGISTRATION_NEEDED).value().spelled()).isEqualTo("yes");
        assertThat(EXAMPLE.of(Rules.COUNTED_LIST_TO_MAIL_DESK).value().spelled())
                .isEqualTo("no");
        assertThat(EXAMPLE.of(Rule.consequence(Reason.WRONG_STYLE)).value().spelled())
                .isEqualTo("in_part shared_contests");
        assertThat(EXAMPLE.of(Rule.consequence(Reason.NO_IDENTIFICATION))
                        .value()
                        .spelled())
                .isEqualTo("reject, cure identification");
        assertThat(EXAMPLE.of(Rule.cure(Ask.IDENTIFICATION)).value().spelled())
                .isEqualTo("7 days after election day, 5:00 pm; if closed, the next open day");
        assertThat(EXAMPLE.of(Rule.cure(Ask.ELIGIBILITY)).value().spelled()).isEqualTo("unknown");
    }

    @Test
    void cites_a_reference_as_far_as_it_goes() {
        assertThat(new Reference("52 USC", "20507(a)(1)", 2023).words()).isEqualTo("52 USC 20507(a)(1) (2023)");
        assertThat(new Reference("Common practice", "", 2026).words()).isEqualTo("Common practice (2026)");
        assertThat(new Reference("not in the rule pack", "", 0).words()).isEqualTo("not in the rule pack");
    }
}
