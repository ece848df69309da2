package org.proviso.core.adjudication.explain;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.proviso.core.adjudication.Answer;
import org.proviso.core.adjudication.Answered;
import org.proviso.core.adjudication.CaseReport;
import org.proviso.core.adjudication.Evidence;
import org.proviso.core.adjudication.Heading;
import org.proviso.core.adjudication.Source;
import org.proviso.core.rules.Basis;
import org.proviso.core.rules.Given;

/**
 * One of the eight headings of what the law asks: how it stands, the answer in a few words, what is unfolded because it
 * stands in the way or is open, and otherwise the evidence and the rules behind the clear answer.
 */
public record LawLine(
        Heading heading,
        Standing standing,
        String summary,
        List<LawDetail> unfolded,
        List<String> evidence,
        List<String> references) {

    /** Whether a heading needs anybody. */
    public enum Standing {
        CLEAR,
        /** Nobody knows yet whose records to look at. */
        WAITS_FOR_VOTER,
        OPEN,
        DEFECT
    }

    /** What the records part shows already, and fields simply filled in, are not said twice. */
    private static final Set<Source> SAID =
            Set.of(Source.ROLL, Source.STREET_FILE, Source.COURT, Source.PERSON, Source.ENVELOPE);

    /** The eight of a case, in their order. */
    public static List<LawLine> all(CaseReport report) {
        return Stream.of(Heading.values()).map(heading -> of(report, heading)).toList();
    }

    private static LawLine of(CaseReport report, Heading heading) {
        List<Answered> answered = report.presumed().answered().stream()
                .filter(one -> one.question().heading() == heading)
                .toList();
        List<Answered> unfolded = answered.stream()
                .filter(one -> !isPlain(one.answer()) && !report.waitsForVoter(one))
                .toList();
        boolean waits = unfolded.isEmpty() && answered.stream().anyMatch(report::waitsForVoter);
        return new LawLine(
                heading,
                waits ? Standing.WAITS_FOR_VOTER : standing(unfolded),
                waits ? "waiting for a confirmed voter" : summary(answered, unfolded),
                unfolded.stream().map(LawLine::detail).toList(),
                evidence(answered),
                answered.stream().flatMap(LawLine::references).distinct().toList());
    }

    private static boolean isPlain(Answer answer) {
        return answer instanceof Answer.Clear || answer instanceof Answer.NotAsked;
    }

    private static Standing standing(List<Answered> unfolded) {
        if (unfolded.isEmpty()) {
            return Standing.CLEAR;
        }
        boolean defect = unfolded.stream().anyMatch(one -> one.answer() instanceof Answer.Defect);
        return defect ? Standing.DEFECT : Standing.OPEN;
    }

    private static String summary(List<Answered> answered, List<Answered> unfolded) {
        if (unfolded.isEmpty()) {
            return shortest(answered);
        }
        boolean anyDefect = unfolded.stream().anyMatch(one -> one.answer() instanceof Answer.Defect);
        boolean anyOpen = unfolded.stream().anyMatch(one -> one.answer() instanceof Answer.Open);
        return anyDefect ? (anyOpen ? "defect, and some questions are open" : "defect") : "open";
    }

    /** Of several clear answers the one that says most. */
    private static String shortest(List<Answered> answered) {
        List<String> words = new ArrayList<>();
        for (Answered one : answered) {
            String answer = one.answer().words();
            if (one.answer() instanceof Answer.Clear && !words.contains(answer)) {
                words.add(answer);
            }
        }
        if (answered.get(0).question().heading() == Heading.ENVELOPE) {
            return "yes";
        }
        words.removeIf(answer -> words.size() > 1 && answer.equals("Yes"));
        return words.isEmpty() ? "not asked" : words.size() == 1 ? lower(words.get(0)) : several(answered, words);
    }

    private static String several(List<Answered> answered, List<String> words) {
        return switch (answered.get(0).question().heading()) {
            case ALREADY_VOTED -> "no";
            case ANYTHING_ELSE -> "nothing known";
            default -> lower(words.get(0));
        };
    }

    private static LawDetail detail(Answered one) {
        String asks = one.question().asks();
        boolean again = asks.equals(one.question().heading().asks());
        boolean expects = one.answer() instanceof Answer.Open open && open.expected() != null;
        return new LawDetail(
                one,
                (again ? "" : asks + " ") + one.answer().words() + ".",
                expects ? "The records suggest: " + lower(expected(one)) + "." : "",
                evidence(List.of(one)),
                references(one).distinct().toList());
    }

    private static String expected(Answered one) {
        Answer expected = ((Answer.Open) one.answer()).expected();
        return expected == null ? "" : expected.words();
    }

    private static List<String> evidence(List<Answered> answered) {
        Set<String> words = new LinkedHashSet<>();
        for (Answered one : answered) {
            one.evidence().stream()
                    .filter(evidence -> SAID.contains(evidence.source()))
                    .map(Evidence::words)
                    .forEach(words::add);
        }
        return List.copyOf(words);
    }

    private static Stream<String> references(Answered one) {
        return one.answer().restsOn().stream()
                .map(given -> given.reference().words() + ": " + given.rule().meaning() + ": "
                        + given.value().inWords() + basis(given) + ".");
    }

    private static String basis(Given given) {
        return given.basis() == Basis.MEMORY ? " (from memory)" : "";
    }

    private static String lower(String words) {
        return words.isEmpty() ? words : Character.toLowerCase(words.charAt(0)) + words.substring(1);
    }
}
