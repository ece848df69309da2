package org.proviso.core.adjudication;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDateTime;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.proviso.core.RegistrationChannel;
import org.proviso.core.RollStatus;
import org.proviso.core.YesNo;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.rules.Basis;
import org.proviso.core.rules.ChangedPack;
import org.proviso.core.rules.Reason;
import org.proviso.core.rules.Rule;
import org.proviso.core.rules.RuleValue;
import org.proviso.core.rules.Rules;
import org.proviso.core.rules.StateRules;

class WaitingForRulingTest {

    private final SmallCase small = new SmallCase();

    private Set<Rule> toRuleOn() {
        CaseReport report = small.report(LocalDateTime.of(2026, 11, 4, 12, 0));
        return WaitingForRuling.rulesToRuleOn(report, small.pack.resolved());
    }

    @Test
    void a_case_that_waits_for_people_only_waits_for_no_ruling() {
        assertThat(toRuleOn()).isEmpty();
    }

    @Test
    void a_rule_that_an_open_answer_turns_on_is_to_be_ruled_on() {
        small.envelope.idShown = YesNo.NO;
        small.pack.without(Rule.consequence(Reason.NO_IDENTIFICATION));
        assertThat(toRuleOn()).containsExactly(Rule.consequence(Reason.NO_IDENTIFICATION));
        small.pack = ChangedPack.of("example").fromMemory(Rule.consequence(Reason.NO_IDENTIFICATION));
        assertThat(toRuleOn()).containsExactly(Rule.consequence(Reason.NO_IDENTIFICATION));
    }

    @Test
    void a_rule_that_decides_what_the_fact_is_is_to_be_ruled_on_too() {
        small.records.election = SmallElection.PRIMARY;
        small.records.style("A", "North", "PRES");
        small.voter.party = "South";
        assertThat(toRuleOn()).doesNotContain(Rules.PRIMARY);
        small.pack.without(Rules.PRIMARY);
        assertThat(toRuleOn()).containsExactly(Rules.PRIMARY);
    }

    @Test
    void of_the_rules_behind_a_fact_those_firm_and_those_a_state_does_not_have_need_no_ruling() {
        small.voter.registered = null;
        assertThat(toRuleOn()).isEmpty();
        small.pack.fromMemory(Rules.REGISTER_IN_PERSON);
        assertThat(toRuleOn()).containsExactly(Rules.REGISTER_IN_PERSON);
        RuleValue inPerson =
                small.pack.pack().values().get(Rules.REGISTER_IN_PERSON).get(0).value();
        small.pack.with(StateRules.REGISTER_AGENCY, inPerson, Basis.MEMORY);
        assertThat(toRuleOn()).containsExactlyInAnyOrder(Rules.REGISTER_IN_PERSON, StateRules.REGISTER_AGENCY);
    }

    /** Its registration is known: whether it is accepted is for a person to say, and no deadline bears on it. */
    @Test
    void a_question_whose_facts_are_known_waits_for_no_rule_behind_them() {
        small.voter.status = RollStatus.PENDING;
        small.voter.channel = RegistrationChannel.SAME_DAY;
        small.pack.word(Rules.SAME_DAY, "counts_when_accepted").fromMemory(Rules.REGISTER_IN_PERSON);
        assertThat(small.settledWord(Fact.REGISTRATION)).isEqualTo("same_day_pending");
        assertThat(toRuleOn()).isEmpty();
    }
}
