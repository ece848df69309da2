package org.proviso.core.adjudication.explain;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.proviso.core.adjudication.Answer;
import org.proviso.core.adjudication.Answered;
import org.proviso.core.adjudication.CaseReport;
import org.proviso.core.adjudication.Evidence;
import org.proviso.core.adjudication.Heading;
import org.proviso.core.adjudication.Source;
import org.proviso.core.rules.Basis;
import org.proviso.core.rules.Given;

/** What the law asks: eight headings, the clear ones on one line, the others unfolded with evidence and reference. */
final class LawPart {

    private LawPart() {}

    static void write(CaseReport report, Page page) {
        page.title("What the law asks");
        for (Heading heading : Heading.values()) {
            List<Answered> answered = report.presumed().answered().stream()
                    .filter(one -> one.question().heading() == heading)
                    .toList();
            write(report, heading, answered, page);
        }
    }

    private static void write(CaseReport report, Heading heading, List<Answered> answered, Page page) {
        List<Answered> unfolded = answered.stream()
                .filter(one -> !isPlain(one.answer()) && !report.waitsForVoter(one))
                .toList();
        boolean waits = answered.stream().anyMatch(report::waitsForVoter);
        String summary = unfolded.isEmpty() && waits ? "waits for who the voter is" : summary(answered, unfolded);
        page.edges("  " + heading.number() + "  " + heading.asks(), summary);
        unfolded.forEach(one -> unfold(one, page));
        if (unfolded.isEmpty() && !waits) {
            String said = String.join(" ", evidence(answered));
            if (!said.isEmpty()) {
                page.wrapped("       ", said);
            }
            answered.forEach(one -> references(one).forEach(words -> page.wrapped("       Rule: ", words)));
        }
    }

    private static String summary(List<Answered> answered, List<Answered> unfolded) {
        if (unfolded.isEmpty()) {
            return shortest(answered);
        }
        boolean anyDefect = unfolded.stream().anyMatch(one -> one.answer() instanceof Answer.Defect);
        boolean anyOpen = unfolded.stream().anyMatch(one -> one.answer() instanceof Answer.Open);
        return anyDefect ? (anyOpen ? "no, and something is open" : "no") : "open";
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

    private static boolean isPlain(Answer answer) {
        return answer instanceof Answer.Clear || answer instanceof Answer.NotAsked;
    }

    private static void unfold(Answered one, Page page) {
        String asks = one.question().asks();
        boolean again = asks.equals(one.question().heading().asks());
        page.wrapped("     ", (again ? "" : asks + " ") + one.answer().words() + ".");
        if (one.answer() instanceof Answer.Open open && open.expected() != null) {
            page.wrapped(
                    "       ", "The records suggest: " + lower(open.expected().words()) + ".");
        }
        String said = String.join(" ", evidence(List.of(one)));
        if (!said.isEmpty()) {
            page.wrapped("       ", said);
        }
        references(one).forEach(words -> page.wrapped("       Rule: ", words));
    }

    private static Set<String> evidence(List<Answered> answered) {
        Set<String> words = new LinkedHashSet<>();
        for (Answered one : answered) {
            for (Evidence evidence : one.evidence()) {
                if (says(evidence)) {
                    words.add(evidence.words());
                }
            }
        }
        return words;
    }

    /** Of what the records part shows already, and of fields simply filled in, nothing is said twice. */
    private static boolean says(Evidence evidence) {
        return evidence.source() == Source.ROLL
                || evidence.source() == Source.STREET_FILE
                || evidence.source() == Source.COURT
                || evidence.source() == Source.PERSON
                || evidence.source() == Source.ENVELOPE;
    }

    private static Set<String> references(Answered one) {
        Set<String> references = new LinkedHashSet<>();
        for (Given given : one.answer().restsOn()) {
            references.add(given.reference().words() + ": " + given.rule().meaning() + ": "
                    + given.value().inWords() + basis(given) + ".");
        }
        return references;
    }

    private static String basis(Given given) {
        return given.basis() == Basis.MEMORY ? " (from memory)" : "";
    }

    private static String lower(String words) {
        return words.isEmpty() ? words : Character.toLowerCase(words.charAt(0)) + words.substring(1);
    }
}
