package org.proviso.core.adjudication;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.proviso.core.CountyRuling;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.YesNo;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.core.calendar.ClosedDayRule;
import org.proviso.core.calendar.DeadlineAnchor;
import org.proviso.core.calendar.DeadlineOffset;
import org.proviso.core.calendar.DeadlineRule;
import org.proviso.core.calendar.TimeOfDay;
import org.proviso.core.rules.Ask;
import org.proviso.core.rules.ChangedPack;
import org.proviso.core.rules.Consequence;
import org.proviso.core.rules.DeadlineBook;
import org.proviso.core.rules.Reason;
import org.proviso.core.rules.Rule;
import org.proviso.core.rules.RuleValue;
import org.proviso.core.rules.Rules;

class WhatIfTest {

    private static final LocalDateTime NOON = LocalDateTime.of(2026, 11, 4, 12, 0);

    private final SmallCase small = new SmallCase();

    private Optional<WhatIf> under(UnaryOperator<ChangedPack> change) {
        small.pack = ChangedPack.of("example");
        CaseReport before = small.report(NOON);
        small.pack = change.apply(ChangedPack.of("example"));
        return WhatIf.between(before, small.report(NOON));
    }

    @Test
    void a_case_that_comes_out_the_same_is_not_told() {
        assertThat(under(pack -> pack)).isEmpty();
        assertThat(under(pack -> pack.flag(Rules.EXTENDED_HELD_APART, false))).isEmpty();
    }

    @Test
    void a_case_that_comes_out_otherwise_says_from_what_to_what_and_by_which_rule() {
        small.envelope.idShown = YesNo.NO;
        WhatIf whatIf = under(pack ->
                        pack.follows(Reason.NO_IDENTIFICATION, new Consequence(Consequence.Effect.REJECT, null, null)))
                .orElseThrow();
        assertThat(whatIf.envelopeNo()).isEqualTo(new EnvelopeNumber("E-1"));
        assertThat(whatIf.outlookBefore()).isEqualTo(Recommendation.WAIT_FOR_THE_VOTER);
        assertThat(whatIf.outlookAfter()).isEqualTo(Recommendation.REJECT);
        assertThat(whatIf.because())
                .singleElement()
                .asString()
                .contains("(the ballot is rejected, unless the voter does this in time: ")
                .contains(" changes to ")
                .contains("(the ballot is rejected)")
                .contains(", under ")
                .endsWith("(Made for a test (2026)).");
    }

    @Test
    void a_longer_time_to_cure_is_told_although_no_answer_changes() {
        small.envelope.idShown = YesNo.NO;
        RuleValue tenDays = new RuleValue.Dated(new DeadlineRule(
                DeadlineAnchor.ELECTION_DAY,
                new DeadlineOffset.Days(10),
                TimeOfDay.CLOSE_OF_BUSINESS,
                ClosedDayRule.NEXT_OPEN_DAY));
        WhatIf whatIf =
                under(pack -> pack.with(Rule.cure(Ask.IDENTIFICATION), tenDays)).orElseThrow();
        assertThat(whatIf.after()).isEqualTo(whatIf.before());
        assertThat(whatIf.because()).containsExactly("The voter's time to cure changes.");
    }

    @Test
    void a_rule_that_is_only_remembered_opens_a_question_that_was_answered() {
        small.voter.registered = LocalDate.of(2026, 10, 20);
        WhatIf whatIf = under(pack -> pack.fromMemory(Rule.consequence(Reason.REGISTERED_LATE)))
                .orElseThrow();
        assertThat(whatIf.before()).isEqualTo(Recommendation.REJECT);
        assertThat(whatIf.after()).isEqualTo(Recommendation.RESEARCH);
        assertThat(whatIf.outlookAfter()).isEqualTo(Recommendation.REJECT);
        assertThat(whatIf.because())
                .containsExactly("An open question is now answered, or an answered one is now open.");
    }

    @Test
    void a_value_that_is_only_supposed_is_called_so() {
        small.envelope.idShown = YesNo.NO;
        CaseReport before = small.report(NOON);
        CountyRuling supposed = new CountyRuling(
                Rule.consequence(Reason.NO_IDENTIFICATION).key(),
                "none",
                WhatIf.SUPPOSED,
                LocalDate.of(2026, 11, 4),
                "");
        DeadlineBook book = DeadlineBook.of(small.pack.resolved(supposed), Set.of());
        CaseReport after = new Adjudicator(small.records, book, NOON).report(small.envelope.make(), small.link);
        assertThat(WhatIf.between(before, after).orElseThrow().because())
                .singleElement()
                .asString()
                .endsWith(" (supposed value).");
    }
}
