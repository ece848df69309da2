package org.proviso.review;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.proviso.core.matching.Candidate;

/** The words of a link as one text each: a line a sentence, or a line a candidate with its parts between tabs. */
final class LinkText {

    private LinkText() {}

    static String sentences(List<String> sentences) {
        return String.join("\n", sentences);
    }

    static List<String> sentences(String text) {
        return text.isEmpty() ? List.of() : List.of(text.split("\n"));
    }

    static String candidates(List<Candidate> candidates) {
        return candidates.stream().map(LinkText::line).collect(Collectors.joining("\n"));
    }

    static List<Candidate> candidates(String text) {
        return sentences(text).stream().map(LinkText::candidate).toList();
    }

    private static String line(Candidate candidate) {
        List<String> parts = new ArrayList<>(List.of(candidate.voterId(), Double.toString(candidate.probability())));
        parts.addAll(candidate.evidence());
        return String.join("\t", parts);
    }

    private static Candidate candidate(String line) {
        List<String> parts = Arrays.asList(line.split("\t"));
        return new Candidate(parts.get(0), Double.parseDouble(parts.get(1)), parts.subList(2, parts.size()));
    }
}
