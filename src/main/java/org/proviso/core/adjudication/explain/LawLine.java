package org.proviso.core.adjudication.explain;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.proviso.core.adjudication.CaseReport;
import org.proviso.core.adjudication.finding.Evidence;
import org.proviso.core.adjudication.finding.EvidenceSource;
import org.proviso.core.adjudication.judging.AnsweredQuestion;
import org.proviso.core.adjudication.questions.Answer;
import org.proviso.core.adjudication.questions.QuestionHeading;
import org.proviso.core.rules.Basis;
import org.proviso.core.rules.ResolvedRule;

/**
 * One of the eight headings of what the law asks: how it stands, the answer in a few words, what is unfolded because it
 * stands in the way or is open, and otherwise the evidence and the rules behind the clear answer.
 */
public record LawLine(
        QuestionHeading heading,
        Status standing,
        String summary,
        List<LawDetail> unfolded,
        List<String> evidence,
        List<String> references) {

    /** Whether a heading needs a person. */
    public enum Status {
        CLEAR,
        /** It is not known yet whose records to check. */
        WAITS_FOR_VOTER,
        OPEN,
        DEFECT
    }

    /** What the records part already shows, and fields that are simply filled in, are not repeated. */
    private static final Set<EvidenceSource> SAID = Set.of(
            EvidenceSource.ROLL,
            EvidenceSource.STREET_FILE,
            EvidenceSource.COURT,
            EvidenceSource.PERSON,
            EvidenceSource.ENVELOPE);

    /** The eight of a case, in their order. */
    public static List<LawLine> all(CaseReport report) {
        return Stream.of(QuestionHeading.values())
                .map(heading -> of(report, heading))
                .toList();
    }

    private static LawLine of(CaseReport report, QuestionHeading heading) {
        List<AnsweredQuestion> answered = report.presumed().answered().stream()
                .filter(answeredQuestion -> answeredQuestion.question().heading() == heading)
                .toList();
        List<AnsweredQuestion> unfolded = answered.stream()
                .filter(answeredQuestion ->
                        !isPlain(answeredQuestion.answer()) && !report.waitsForVoter(answeredQuestion))
                .toList();
        boolean waits = unfolded.isEmpty() && answered.stream().anyMatch(report::waitsForVoter);
        return new LawLine(
                heading,
                waits ? Status.WAITS_FOR_VOTER : standing(unfolded),
                waits ? "waiting for a confirmed voter" : summary(answered, unfolded),
                unfolded.stream().map(LawLine::detail).toList(),
                evidence(answered),
                answered.stream().flatMap(LawLine::references).distinct().toList());
    }

    private static boolean isPlain(Answer answer) {
        return answer instanceof Answer.Clear || answer instanceof Answer.NotAsked;
    }

    private static Status standing(List<AnsweredQuestion> unfolded) {
        if (unfolded.isEmpty()) {
            return Status.CLEAR;
        }
        boolean defect =
                unfolded.stream().anyMatch(answeredQuestion -> answeredQuestion.answer() instanceof Answer.Defect);
        return defect ? Status.DEFECT : Status.OPEN;
    }

    private static String summary(List<AnsweredQuestion> answered, List<AnsweredQuestion> unfolded) {
        if (unfolded.isEmpty()) {
            return shortest(answered);
        }
        Optional<String> voted = voted(unfolded);
        if (voted.isPresent()) {
            return voted.get();
        }
        boolean anyDefect =
                unfolded.stream().anyMatch(answeredQuestion -> answeredQuestion.answer() instanceof Answer.Defect);
        boolean anyOpen =
                unfolded.stream().anyMatch(answeredQuestion -> answeredQuestion.answer() instanceof Answer.Open);
        return anyDefect ? (anyOpen ? "defect, and some questions are open" : "defect") : "open";
    }

    /** "Already voted?" says what is known, so that nobody has to tell two meanings of a word apart by its color. */
    private static Optional<String> voted(List<AnsweredQuestion> unfolded) {
        return unfolded.stream()
                .filter(answeredQuestion -> answeredQuestion.question().heading() == QuestionHeading.ALREADY_VOTED)
                .map(AnsweredQuestion::answer)
                .filter(Answer.Defect.class::isInstance)
                .map(Answer.Defect.class::cast)
                .findFirst()
                .map(defect -> "voted: " + lower(defect.reason().words()));
    }

    /** Of several clear answers the one that says most. */
    private static String shortest(List<AnsweredQuestion> answered) {
        List<String> words = new ArrayList<>();
        for (AnsweredQuestion answeredQuestion : answered) {
            String answer = answeredQuestion.answer().words();
            if (answeredQuestion.answer() instanceof Answer.Clear && !words.contains(answer)) {
                words.add(answer);
            }
        }
        if (answered.get(0).question().heading() == QuestionHeading.ENVELOPE) {
            return "yes";
        }
        if (answered.get(0).question().heading() == QuestionHeading.ALREADY_VOTED) {
            return words.isEmpty() ? "not asked" : "not voted";
        }
        words.removeIf(answer -> words.size() > 1 && answer.equals("Yes"));
        return words.isEmpty() ? "not asked" : words.size() == 1 ? lower(words.get(0)) : several(answered, words);
    }

    private static String several(List<AnsweredQuestion> answered, List<String> words) {
        return switch (answered.get(0).question().heading()) {
            case ANYTHING_ELSE -> "nothing known";
            default -> lower(words.get(0));
        };
    }

    private static LawDetail detail(AnsweredQuestion answeredQuestion) {
        String asks = answeredQuestion.question().asks();
        boolean again = asks.equals(answeredQuestion.question().heading().asks());
        boolean expects = answeredQuestion.answer() instanceof Answer.Open open && open.expected() != null;
        return new LawDetail(
                answeredQuestion,
                (again ? "" : asks + " ") + answeredQuestion.answer().words() + ".",
                expects ? "The records suggest: " + lower(expected(answeredQuestion)) + "." : "",
                evidence(List.of(answeredQuestion)),
                references(answeredQuestion).distinct().toList());
    }

    private static String expected(AnsweredQuestion answeredQuestion) {
        Answer expected = ((Answer.Open) answeredQuestion.answer()).expected();
        return expected == null ? "" : expected.words();
    }

    private static List<String> evidence(List<AnsweredQuestion> answered) {
        Set<String> words = new LinkedHashSet<>();
        for (AnsweredQuestion answeredQuestion : answered) {
            answeredQuestion.evidence().stream()
                    .filter(evidence -> SAID.contains(evidence.source()))
                    .map(Evidence::words)
                    .forEach(words::add);
        }
        return List.copyOf(words);
    }

    private static Stream<String> references(AnsweredQuestion answeredQuestion) {
        return answeredQuestion.answer().restsOn().stream()
                .map(given -> given.reference().words() + ": " + given.rule().meaning() + ": "
                        + given.value().inWords() + basis(given) + ".");
    }

    private static String basis(ResolvedRule given) {
        return given.basis() == Basis.MEMORY ? " (from memory)" : "";
    }

    private static String lower(String words) {
        return words.isEmpty() ? words : Character.toLowerCase(words.charAt(0)) + words.substring(1);
    }
}
