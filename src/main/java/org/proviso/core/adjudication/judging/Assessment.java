package org.proviso.core.adjudication.judging;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.VoteTimeFact;
import org.proviso.core.adjudication.finding.CaseFacts;
import org.proviso.core.adjudication.finding.Evidence;
import org.proviso.core.adjudication.questions.Answer;
import org.proviso.core.adjudication.questions.AskStatus;
import org.proviso.core.adjudication.questions.Question;
import org.proviso.core.adjudication.questions.QuestionContext;
import org.proviso.core.adjudication.questions.QuestionList;
import org.proviso.core.rules.Ask;
import org.proviso.core.rules.Rule;
import org.proviso.core.rules.Rules;

/**
 * What the rules say of one case: a pure function of the facts, the rules resolved for the election, and the as-of
 * moment (in the clocks). The same three and the same engine version give the same assessment, byte for byte.
 */
public record Assessment(
        CaseFacts facts,
        List<AnsweredQuestion> answered,
        AssessmentOutcome outcome,
        List<DueAsk> asks,
        boolean heldApart) {

    /** Raised when an answer, or its words, may change for the same facts; stored with every assessment. */
    public static final int ENGINE_VERSION = 4;

    /** Where the law says what follows from each defect, each place once. */
    public List<String> consequences() {
        return answered.stream()
                .map(AnsweredQuestion::answer)
                .filter(Answer.Defect.class::isInstance)
                .map(Answer.Defect.class::cast)
                .flatMap(defect -> defect.restsOn().stream()
                        .filter(given -> given.rule().equals(Rule.consequence(defect.reason()))))
                .map(given -> given.reference().words())
                .distinct()
                .toList();
    }

    /** Answers every question and folds the answers. */
    public static Assessment assess(CaseFacts facts, QuestionContext setting) {
        List<AnsweredQuestion> answered = new ArrayList<>();
        for (Question question : QuestionList.all()) {
            answered.add(new AnsweredQuestion(question, question.answer(facts, setting), evidence(question, facts)));
        }
        return assess(facts, answered, setting);
    }

    /** The same case if every open question is answered as the records suggest; for sorting, never for a decision. */
    public static Assessment outlook(CaseFacts facts, QuestionContext setting) {
        return assess(facts, setting).outlook(setting);
    }

    /** The outlook of this case, under the same setting. */
    public Assessment outlook(QuestionContext setting) {
        List<AnsweredQuestion> expected = new ArrayList<>();
        for (AnsweredQuestion answeredQuestion : answered) {
            expected.add(new AnsweredQuestion(
                    answeredQuestion.question(), expected(answeredQuestion.answer()), answeredQuestion.evidence()));
        }
        return assess(facts, expected, setting);
    }

    private static Assessment assess(CaseFacts facts, List<AnsweredQuestion> answered, QuestionContext setting) {
        List<Answer> answers = answered.stream().map(AnsweredQuestion::answer).toList();
        AssessmentOutcome outcome = RecommendationFold.fold(answers, facts.contests(), setting.pack()::precedence);
        return new Assessment(facts, List.copyOf(answered), outcome, asks(answers, setting), apart(facts, setting));
    }

    /** What the answers that are open still lack, in the order of the questions. */
    public List<String> stillOpen() {
        Set<String> open = new LinkedHashSet<>();
        for (AnsweredQuestion answeredQuestion : answered) {
            if (answeredQuestion.answer() instanceof Answer.Open missing) {
                open.add(missing.missing());
            }
        }
        if (open.isEmpty() && outcome.recommendation() == Recommendation.RESEARCH) {
            open.add("only some contests may count, and the contests on the two ballots are not known yet");
        }
        return List.copyOf(open);
    }

    private static Answer expected(Answer answer) {
        return answer instanceof Answer.Open open && open.expected() != null ? expected(open.expected()) : answer;
    }

    private static List<DueAsk> asks(List<Answer> answers, QuestionContext setting) {
        Map<Ask, DueAsk> asks = new LinkedHashMap<>();
        for (Answer answer : answers) {
            if (answer instanceof Answer.Defect defect && defect.ask() == AskStatus.RUNNING) {
                Ask ask = Objects.requireNonNull(defect.consequence().cure(), "time runs only where there is a cure");
                asks.putIfAbsent(
                        ask,
                        new DueAsk(
                                ask,
                                defect.reason(),
                                defect.ask(),
                                setting.clocks().deadline(ask),
                                setting.clocks().waitsForTheMeeting(ask)));
            }
        }
        return List.copyOf(asks.values());
    }

    /** Ballots of court-extended hours are kept apart for good, unless the pack says otherwise. */
    private static boolean apart(CaseFacts facts, QuestionContext setting) {
        VoteTimeFact time = facts.one(Fact.VOTE_TIME);
        boolean extended = time != null && time.name().startsWith("EXTENDED_");
        return extended
                && (setting.pack().isYes(Rules.EXTENDED_HELD_APART)
                        || !setting.pack().of(Rules.EXTENDED_HELD_APART).isKnown());
    }

    private static List<Evidence> evidence(Question question, CaseFacts facts) {
        List<Evidence> evidence = new ArrayList<>();
        for (Fact<?> fact : QuestionReads.by(question)) {
            evidence.addAll(facts.evidence(fact));
        }
        return evidence;
    }

    /** Holder of what each question reads, in the order of the facts; the questions are always the same. */
    private static final class QuestionReads {
        private static final IdentityHashMap<Question, List<Fact<?>>> BY_QUESTION = new IdentityHashMap<>();

        static {
            for (Question question : QuestionList.all()) {
                Set<Fact<?>> reads = question.reads();
                BY_QUESTION.put(
                        question, Fact.all().stream().filter(reads::contains).toList());
            }
        }

        static List<Fact<?>> by(Question question) {
            return Objects.requireNonNull(BY_QUESTION.get(question), "only questions of the list are asked");
        }
    }
}
