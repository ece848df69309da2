package org.proviso.core.adjudication.proof;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import org.proviso.core.adjudication.facts.CheckInFact;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.FactWord;
import org.proviso.core.adjudication.facts.IdentificationFact;
import org.proviso.core.adjudication.facts.MailBallotFact;
import org.proviso.core.adjudication.facts.OtherCountyFact;
import org.proviso.core.adjudication.facts.OtherEnvelopeFact;
import org.proviso.core.adjudication.facts.SignatureFact;
import org.proviso.core.adjudication.questions.Answer;
import org.proviso.core.adjudication.questions.AskStatus;
import org.proviso.core.rules.Consequence.Effect;

/** The promises that can be seen on one question at a time. */
final class TupleChecks {

    private record Voted(Fact<?> fact, FactWord word) {}

    private static final List<Voted> VOTED = List.of(
            new Voted(Fact.MAIL_BALLOTS, MailBallotFact.ACCEPTED),
            new Voted(Fact.CHECK_IN, CheckInFact.VOTED),
            new Voted(Fact.OTHER_COUNTY, OtherCountyFact.VOTED),
            new Voted(Fact.OTHER_ENVELOPE, OtherEnvelopeFact.COUNTED));

    private record Later(Fact<?> fact, FactWord inTime, FactWord late) {}

    private static final List<Later> LATER = List.of(
            new Later(Fact.IDENTIFICATION, IdentificationFact.SUPPLIED_IN_TIME, IdentificationFact.SUPPLIED_LATE),
            new Later(Fact.VOTER_SIGNATURE, SignatureFact.SIGNED_LATER_IN_TIME, SignatureFact.SIGNED_LATER_LATE));

    private final AllAnswers answers;
    private final List<Violation> violations = new ArrayList<>();

    private TupleChecks(AllAnswers answers) {
        this.answers = answers;
    }

    static List<Violation> violations(AllAnswers answers) {
        TupleChecks checks = new TupleChecks(answers);
        Map<String, Predicate<AllAnswers.QuestionAtTuple>> promises = new LinkedHashMap<>();
        promises.put(
                "No decided outcome changes when an unknown fact becomes known.", TupleChecks::changesWhenCompleted);
        promises.put(
                "A ballot never counts, in full or in part, alongside an accepted mail ballot, a vote at another location"
                        + " or in another county, or another envelope that counts.",
                TupleChecks::countsTwice);
        promises.put("More time to cure never makes an outcome worse.", TupleChecks::worseWithMoreTime);
        promises.put(
                "Evidence provided in time is never worse for the voter than evidence provided late.",
                checks::worseInTime);
        checks.smallest(promises);
        return checks.violations;
    }

    /** Every promise is looked at in one pass; of the cases that break it the one that says least is kept. */
    private void smallest(Map<String, Predicate<AllAnswers.QuestionAtTuple>> promises) {
        Map<String, AllAnswers.QuestionAtTuple> found = new LinkedHashMap<>();
        answers.each(asked -> promises.forEach((promise, broken) -> {
            if (broken.test(asked)) {
                found.merge(
                        promise,
                        asked,
                        (question, other) ->
                                other.tuple().known() < question.tuple().known() ? other : question);
            }
        }));
        promises.keySet().forEach(promise -> {
            AllAnswers.QuestionAtTuple broken = found.get(promise);
            if (broken != null) {
                violations.add(new Violation(promise, broken.sentence()));
            }
        });
    }

    /** Clear or final with something unknown must stay so under every completion; open may become anything. */
    private static boolean changesWhenCompleted(AllAnswers.QuestionAtTuple asked) {
        AnswerClass known = asked.kind();
        if (known.isOpen()) {
            return false;
        }
        for (int completed : asked.table().space().completions()[asked.number()]) {
            if (!asked.about(completed).kind().equals(known)) {
                return true;
            }
        }
        return false;
    }

    private static boolean countsTwice(AllAnswers.QuestionAtTuple asked) {
        return !asked.kind().blocksCounting()
                && VOTED.stream().anyMatch(voted -> asked.tuple().holds(voted.fact(), voted.word()))
                && !lawSaysSo(asked.answer());
    }

    /** A rule pack may let it count only by a rule that was read or ruled on. */
    private static boolean lawSaysSo(Answer answer) {
        return answer instanceof Answer.Defect defect
                && defect.consequence().does() == Effect.NONE
                && defect.restsOn().stream().allMatch(given -> given.isFirm());
    }

    private static boolean worseWithMoreTime(AllAnswers.QuestionAtTuple asked) {
        return asked.clocks().asks() == AskStatus.OVER
                && rank(asked.in(AllAnswers.with(AskStatus.RUNNING, asked.clocks()))
                                .kind())
                        < rank(asked.kind());
    }

    private boolean worseInTime(AllAnswers.QuestionAtTuple asked) {
        return rank(asked.kind()) < 2
                && LATER.stream()
                        .filter(later -> asked.tuple().holds(later.fact(), later.inTime()))
                        .anyMatch(later -> rank(asked.kind()) < rankWhenLate(asked, later));
    }

    /** How the case stands when the same comes late: the worst of this question and of others that look at it. */
    @SuppressWarnings("ReferenceEquality") // Each question has one table, too large to compare by what is in it.
    private int rankWhenLate(AllAnswers.QuestionAtTuple asked, Later later) {
        Tuple late = asked.tuple().with(later.fact(), Set.of(later.late()));
        int here = rank(asked.about(asked.table().space().number(late)).kind());
        return answers.tables().stream()
                .filter(other -> other != asked.table()
                        && other.space().question().reads().contains(later.fact()))
                .mapToInt(other -> bestWhenLate(new AllAnswers.QuestionAtTuple(other, asked.world(), 0), later))
                .reduce(here, Math::min);
    }

    private static int bestWhenLate(AllAnswers.QuestionAtTuple first, Later later) {
        int best = -1;
        for (int number = 0; number < first.table().space().size(); number++) {
            AllAnswers.QuestionAtTuple asked = first.about(number);
            if (asked.tuple().holds(later.fact(), later.late())) {
                best = Math.max(best, rank(asked.kind()));
            }
        }
        return best < 0 ? 2 : best;
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
