package org.proviso.core.adjudication;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.proviso.core.adjudication.finding.CaseFacts;
import org.proviso.core.adjudication.judging.AnsweredQuestion;
import org.proviso.core.adjudication.questions.Answer;
import org.proviso.core.adjudication.questions.Question;
import org.proviso.core.rules.ResolvedPack;
import org.proviso.core.rules.ResolvedRule;
import org.proviso.core.rules.Rule;
import org.proviso.core.rules.Rules;
import org.proviso.core.rules.StateRules;

/** Which rules the office must rule on before the open questions of a case can be answered. */
public final class WaitingForRuling {

    /** Rules that decide already what the facts are, so that a question whose fact is unknown may wait for them. */
    private static final Map<String, List<Rule>> BEHIND_FACTS = Map.of(
            "registration.in_time",
            List.of(
                    Rules.REGISTRATION_NEEDED,
                    Rules.REGISTER_IN_PERSON,
                    Rules.REGISTER_ONLINE,
                    Rules.REGISTER_MAIL_POSTMARK,
                    Rules.REGISTER_MAIL_RECEIVED,
                    StateRules.REGISTER_AGENCY,
                    StateRules.REGISTER_LATE_IN_PERSON),
            "ballot.style",
            List.of(Rules.MOVES),
            "ballot.party",
            List.of(Rules.PRIMARY),
            "identification.met",
            List.of(Rules.ID_REQUIRED_OF, Rules.DECLARATION_EXCUSES));

    private WaitingForRuling() {}

    /** The rules, over the presumed link, so that the office can ask counsel before anybody confirmed it. */
    public static Set<Rule> rulesToRuleOn(CaseReport report, ResolvedPack pack) {
        Set<Rule> rules = new LinkedHashSet<>();
        for (AnsweredQuestion answeredQuestion : report.presumed().answered()) {
            if (answeredQuestion.answer() instanceof Answer.Open open) {
                rules.addAll(rulesToRuleOn(
                        answeredQuestion.question(), open, report.presumed().facts(), pack));
            }
        }
        return rules;
    }

    private static Set<Rule> rulesToRuleOn(Question question, Answer.Open open, CaseFacts facts, ResolvedPack pack) {
        Set<Rule> rules = new LinkedHashSet<>();
        open.restsOn().stream()
                .filter(given -> !given.isFirm())
                .map(ResolvedRule::rule)
                .forEach(rules::add);
        boolean factUnknown =
                question.reads().stream().anyMatch(fact -> !facts.finding(fact).isKnown());
        if (rules.isEmpty() && factUnknown) {
            BEHIND_FACTS.getOrDefault(question.key(), List.of()).stream()
                    .filter(rule -> !pack.of(rule).isFirm())
                    .filter(rule ->
                            rule.use() == Rule.Use.NEEDED || !pack.of(rule).isAbsent())
                    .forEach(rules::add);
        }
        return rules;
    }
}
