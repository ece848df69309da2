package org.proviso.core.rules;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Values a rule pack has from memory or does not have but may need: the work list of rulings for an election. */
public final class UnsourcedValues {

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("MMMM d, yyyy", Locale.US);

    private UnsourcedValues() {}

    /** In the order of the vocabulary. Rules that are merely told need no ruling. */
    public static List<ResolvedRule> of(ResolvedPack pack) {
        Set<Rule> unused = unused(pack);
        return pack.all().stream()
                .filter(given -> !given.isFirm() && !unused.contains(given.rule()))
                .filter(given -> given.rule().use() == Rule.Use.NEEDED
                        || (given.rule().use() == Rule.Use.OPTIONAL && !given.isAbsent()))
                .toList();
    }

    /** What is asked of counsel about one of them. */
    public static String question(ResolvedRule given, LocalDate electionDate) {
        String rule = given.rule().meaning();
        String election = "For the election of " + DAY.format(electionDate) + ", ";
        if (given.isKnown()) {
            return election + "please confirm " + rule + ": \"" + given.value().inWords()
                    + "\". The rule pack has it from memory ("
                    + given.reference().words() + ").";
        }
        String words = given.rule().words().isEmpty()
                ? ""
                : " (one of: " + String.join(", ", given.rule().words()).replace('_', ' ') + ")";
        return election + "what is the law on " + rule + words + "? Please give the title, section and year.";
    }

    /** The deadlines of asks that no consequence of this pack makes. */
    private static Set<Rule> unused(ResolvedPack pack) {
        Set<Rule> unused = new LinkedHashSet<>();
        for (Ask ask : Ask.values()) {
            boolean asked = Arrays.stream(Reason.values())
                    .flatMap(reason -> pack.consequence(reason).stream())
                    .anyMatch(consequence -> consequence.cure() == ask);
            if (!asked) {
                unused.addAll(List.of(Rule.cure(ask), Rule.notice(ask), Rule.noticeRequired(ask)));
            }
        }
        return unused;
    }
}
