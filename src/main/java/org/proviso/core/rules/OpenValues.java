package org.proviso.core.rules;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** What a pack has from memory or does not have, and somebody may need: the work list of rulings for an election. */
public final class OpenValues {

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("MMMM d, yyyy", Locale.US);

    private OpenValues() {}

    /** In the order of the vocabulary. Rules that are merely told need no ruling. */
    public static List<Given> of(ResolvedPack pack) {
        Set<Rule> unused = unused(pack);
        return pack.all().stream()
                .filter(given -> !given.isFirm() && !unused.contains(given.rule()))
                .filter(given -> given.rule().use() == Rule.Use.NEEDED
                        || (given.rule().use() == Rule.Use.OPTIONAL && !given.isAbsent()))
                .toList();
    }

    /** What is asked of counsel about one of them. */
    public static String question(Given given, LocalDate electionDate) {
        String rule = given.rule().meaning();
        String election = " in the election of " + DAY.format(electionDate) + ": ";
        if (given.isKnown()) {
            return "Is it right" + election + rule + ", \"" + given.value().inWords()
                    + "\"? The pack has it from memory, of " + given.reference().words() + ".";
        }
        String words = given.rule().words().isEmpty()
                ? ""
                : " (one of: " + String.join(", ", given.rule().words()).replace('_', ' ') + ")";
        return "What is the law" + election + rule + words + "? Title, section and year, please.";
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
