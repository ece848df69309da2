package org.proviso.core.adjudication.questions;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.proviso.core.rules.Ask;
import org.proviso.core.rules.Consequence;
import org.proviso.core.rules.Reason;
import org.proviso.core.rules.ResolvedPack;
import org.proviso.core.rules.ResolvedRule;
import org.proviso.core.rules.Rule;

/**
 * The rules and clocks under which questions are answered, and the one place where a reason is turned into its
 * consequence: always the pack's, and never a rejection or a cut on a value that nobody has read or ruled on.
 */
public record QuestionContext(ResolvedPack pack, CaseClocks clocks) {

    /** Nothing stands in the way; the rules named are those the answer rests on. */
    public Answer clear(String words, Rule... restsOn) {
        return new Answer.Clear(words, given(restsOn));
    }

    /** Not known yet, and the records suggest nothing. */
    public Answer open(String missing, Rule... restsOn) {
        return new Answer.Open(missing, null, given(restsOn));
    }

    /** Not known yet; the records suggest this answer. */
    public Answer open(String missing, Answer expected) {
        return new Answer.Open(missing, expected, expected.restsOn());
    }

    /** A fact that is not known yet. */
    public Answer notKnown(String what) {
        return open(what + " is not known yet");
    }

    /** The pack gives no value for a rule that this answer turns on. */
    public Answer ruleUnknown(Rule rule) {
        return open("no source settles " + rule.meaning() + "; the office must sign a county ruling", rule);
    }

    /** A reason stands in the way: what follows is the pack's to say; the rules named are what found the reason. */
    public Answer defect(Reason reason, Rule... foundBy) {
        Rule rule = Rule.consequence(reason);
        Optional<Consequence> consequence = pack.consequence(reason);
        if (consequence.isEmpty()) {
            return ruleUnknown(rule);
        }
        List<ResolvedRule> restsOn = given(foundBy);
        restsOn.add(0, pack.of(rule));
        return weigh(reason, consequence.get(), restsOn);
    }

    private Answer weigh(Reason reason, Consequence consequence, List<ResolvedRule> restsOn) {
        Ask cure = consequence.cure();
        AskStatus clock = cure == null ? null : clockOf(cure, restsOn);
        Answer.Defect defect = new Answer.Defect(reason, consequence, clock, List.copyOf(restsOn));
        if (!consequence.costsTheVoter()) {
            return defect;
        }
        if (cure != null && clock == AskStatus.OVER_WITHOUT_NOTICE) {
            return new Answer.Open(
                    "the time to " + cure.words() + " ran out, but no notice was logged as sent in time",
                    null,
                    defect.restsOn());
        }
        if (cure != null && clock == AskStatus.NOT_SETTLED) {
            return ruleUnknown(Rule.cure(cure));
        }
        return ruledFirst(defect, clock);
    }

    private AskStatus clockOf(Ask cure, List<ResolvedRule> restsOn) {
        AskStatus clock = clocks.ask(cure);
        restsOn.add(pack.of(Rule.cure(cure)));
        if (clock != AskStatus.RUNNING) {
            restsOn.add(pack.of(Rule.noticeRequired(cure)));
        }
        return clock;
    }

    /** While a voter may still cure, nothing is taken away yet; after that every value must be firm. */
    private Answer ruledFirst(Answer.Defect defect, @Nullable AskStatus clock) {
        return defect.restsOn().stream()
                .filter(given -> !given.isFirm())
                .filter(given ->
                        clock != AskStatus.RUNNING || !given.rule().key().startsWith("cure."))
                .findFirst()
                .<Answer>map(given -> new Answer.Open(
                        "the office must sign a county ruling on "
                                + given.rule().meaning() + " (" + given.rule().key()
                                + "): the rule pack has it from memory",
                        defect,
                        defect.restsOn()))
                .orElse(defect);
    }

    private List<ResolvedRule> given(Rule... rules) {
        List<ResolvedRule> given = new ArrayList<>();
        for (Rule rule : rules) {
            given.add(pack.of(rule));
        }
        return given;
    }
}
