package org.proviso.core.adjudication.proof;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiPredicate;
import org.proviso.core.adjudication.Answer;
import org.proviso.core.adjudication.AskClock;
import org.proviso.core.adjudication.Question;
import org.proviso.core.adjudication.facts.CheckInFact;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.FactWord;
import org.proviso.core.adjudication.facts.Identification;
import org.proviso.core.adjudication.facts.MailBallotFact;
import org.proviso.core.adjudication.facts.OtherCounty;
import org.proviso.core.adjudication.facts.OtherEnvelope;
import org.proviso.core.adjudication.facts.SignatureFact;
import org.proviso.core.adjudication.questions.QuestionList;
import org.proviso.core.rules.Consequence.Does;

/** The promises that can be seen on one question at a time. */
final class TupleChecks {

    private record Voted(Fact<?> fact, FactWord word) {}

    private static final List<Voted> VOTED = List.of(
            new Voted(Fact.MAIL_BALLOTS, MailBallotFact.ACCEPTED),
            new Voted(Fact.CHECK_IN, CheckInFact.VOTED),
            new Voted(Fact.OTHER_COUNTY, OtherCounty.VOTED),
            new Voted(Fact.OTHER_ENVELOPE, OtherEnvelope.COUNTED));

    private record Later(Fact<?> fact, FactWord inTime, FactWord late) {}

    private static final List<Later> LATER = List.of(
            new Later(Fact.IDENTIFICATION, Identification.SUPPLIED_IN_TIME, Identification.SUPPLIED_LATE),
            new Later(Fact.VOTER_SIGNATURE, SignatureFact.SIGNED_LATER_IN_TIME, SignatureFact.SIGNED_LATER_LATE));

    private final Answers answers;
    private final List<Violation> violations = new ArrayList<>();

    private TupleChecks(Answers answers) {
        this.answers = answers;
    }

    static List<Violation> of(Answers answers) {
        TupleChecks checks = new TupleChecks(answers);
        checks.smallest("No decided outcome changes, however what is unknown turns out.", checks::changesWhenCompleted);
        checks.smallest(
                "A ballot never counts, whole or in part, beside an accepted mail ballot, a vote at another location"
                        + " or in another county, or another envelope that counts.",
                checks::countsTwice);
        checks.smallest("More time to cure never makes an outcome worse.", checks::worseWithMoreTime);
        checks.smallest("What is brought in time is never worse than what is brought late.", checks::worseInTime);
        return checks.violations;
    }

    private void smallest(String promise, BiPredicate<Answers.Asked, Answer> broken) {
        Optional<Map.Entry<Answers.Asked, Answer>> found = answers.all().entrySet().stream()
                .filter(entry -> broken.test(entry.getKey(), entry.getValue()))
                .min(Comparator.comparingLong(entry -> entry.getKey().tuple().known()));
        found.ifPresent(entry -> violations.add(new Violation(
                promise,
                "\"" + entry.getKey().question().asks() + "\" " + entry.getKey().sentence() + ", the answer is \""
                        + entry.getValue().words() + "\"")));
    }

    /** Clear or final with something unknown must stay so under every completion; open may become anything. */
    private boolean changesWhenCompleted(Answers.Asked asked, Answer answer) {
        AnswerClass known = AnswerClass.of(answer);
        return asked.tuple().hasUnknown()
                && !known.isOpen()
                && asked.tuple().completions().stream()
                        .map(tuple -> answers.classOf(new Answers.Asked(asked.question(), asked.world(), tuple)))
                        .anyMatch(completed -> !completed.equals(known));
    }

    private boolean countsTwice(Answers.Asked asked, Answer answer) {
        boolean voted = VOTED.stream().anyMatch(one -> asked.tuple().holds(one.fact(), one.word()));
        return voted && !AnswerClass.of(answer).blocksCounting() && !lawSaysSo(answer);
    }

    /** A pack may let it count only by a rule that somebody read or ruled on. */
    private static boolean lawSaysSo(Answer answer) {
        return answer instanceof Answer.Defect defect
                && defect.consequence().does() == Does.NONE
                && defect.restsOn().stream().allMatch(given -> given.isFirm());
    }

    private boolean worseWithMoreTime(Answers.Asked asked, Answer answer) {
        if (asked.world().asks() != AskClock.OVER) {
            return false;
        }
        World running = new World(AskClock.RUNNING, asked.world().mailReceiptPassed());
        AnswerClass sooner = answers.classOf(new Answers.Asked(asked.question(), running, asked.tuple()));
        return rank(sooner) < rank(AnswerClass.of(answer));
    }

    private boolean worseInTime(Answers.Asked asked, Answer answer) {
        return LATER.stream()
                .filter(later -> asked.tuple().holds(later.fact(), later.inTime()))
                .anyMatch(later -> rank(AnswerClass.of(answer)) < rankWhenLate(asked, later));
    }

    /** How the case stands when the same comes late: the worst of this question and of others that look at it. */
    private int rankWhenLate(Answers.Asked asked, Later later) {
        Tuple late = asked.tuple().with(later.fact(), Set.of(later.late()));
        int here = rank(answers.classOf(new Answers.Asked(asked.question(), asked.world(), late)));
        return QuestionList.all().stream()
                .filter(other -> other != asked.question() && other.reads().contains(later.fact()))
                .mapToInt(other -> bestWhenLate(other, asked.world(), later))
                .reduce(here, Math::min);
    }

    private int bestWhenLate(Question question, World world, Later later) {
        return Tuple.of(question).stream()
                .filter(tuple -> tuple.holds(later.fact(), later.late()))
                .mapToInt(tuple -> rank(answers.classOf(new Answers.Asked(question, world, tuple))))
                .max()
                .orElse(2);
    }

    /** How well an answer stands for the voter: 0 rejects for good, 1 is a settled part, 2 anything else. */
    private static int rank(AnswerClass answer) {
        if (!(answer.sample() instanceof Answer.Defect defect) || !defect.isFinal()) {
            return 2;
        }
        return switch (defect.consequence().does()) {
            case REJECT -> 0;
            case IN_PART -> 1;
            default -> 2;
        };
    }
}
