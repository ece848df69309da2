package org.proviso.notices;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.proviso.core.Code;
import org.proviso.core.adjudication.CaseReport;
import org.proviso.core.adjudication.judging.AnsweredQuestion;
import org.proviso.core.adjudication.judging.DueAsk;
import org.proviso.core.adjudication.questions.Answer;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.core.rules.Ask;
import org.proviso.core.rules.ResolvedRule;
import org.proviso.review.CaseChanged;
import org.proviso.review.CaseState;
import org.proviso.review.Decision;

/**
 * What the voter of a case must be told as it stands: asks whose time runs, and the decision. An ask that ran out
 * uncured is still asked: that its notice never went out must stay to be seen.
 */
record RequiredNotices(List<DueAsk> asks, Set<Ask> stillAsked, Optional<Decision> decision) {

    private static final Set<CaseState> UNDECIDED =
            EnumSet.of(CaseState.RECEIVED, CaseState.OPEN, CaseState.IN_REVIEW, CaseState.PROPOSED, CaseState.READY);
    private static final Set<CaseState> DECIDED = EnumSet.of(CaseState.DECIDED, CaseState.RELEASED);
    private static final List<String> RULES_OF_AN_ASK = List.of("cure.", "notice_required.");

    static RequiredNotices of(CaseChanged news) {
        Optional<Decision> decision = DECIDED.contains(news.state()) ? news.decision() : Optional.empty();
        return UNDECIDED.contains(news.state())
                ? new RequiredNotices(news.report().asks(), ranOut(news.report()), decision)
                : new RequiredNotices(List.of(), Set.of(), decision);
    }

    boolean isAsked(Ask ask) {
        return stillAsked.contains(ask) || asks.stream().anyMatch(due -> due.ask() == ask);
    }

    /** Whether the decision is one that the voter must be told of. */
    boolean losesSomething() {
        return decision.map(Decision::as)
                .filter(as -> as != DecisionOutcome.COUNT)
                .isPresent();
    }

    private static Set<Ask> ranOut(CaseReport report) {
        Set<Ask> asks = EnumSet.noneOf(Ask.class);
        for (AnsweredQuestion answeredQuestion : report.outlook().answered()) {
            Answer answer = answeredQuestion.answer();
            if (answer instanceof Answer.Defect || answer instanceof Answer.Open) {
                answer.restsOn().forEach(given -> askOf(given).ifPresent(asks::add));
            }
        }
        return asks;
    }

    private static Optional<Ask> askOf(ResolvedRule given) {
        String key = given.rule().key();
        return RULES_OF_AN_ASK.stream()
                .filter(key::startsWith)
                .findFirst()
                .flatMap(start -> Code.find(Ask.class, key.substring(start.length())));
    }
}
