package org.proviso.packs;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.proviso.core.calendar.Deadline;
import org.proviso.core.rules.Ask;
import org.proviso.core.rules.DeadlineBook;
import org.proviso.core.rules.PackResolver;
import org.proviso.core.rules.Rule;
import org.proviso.core.rules.RulePack;
import org.proviso.core.rules.Rules;
import org.proviso.files.packs.RulePacks;

/**
 * A deadline that a state or county published (or that was computed by hand from a rule that was read), and what the
 * state's bundled pack says of it for that election. The hour is empty where none was published.
 */
record PublishedRow(
        String table,
        String state,
        LocalDate electionDay,
        String what,
        LocalDate day,
        String hour,
        boolean certain,
        String source) {

    private static final Map<String, List<Rule>> AFTER = Map.of(
            "ID", List.of(Rule.cure(Ask.IDENTIFICATION)),
            "photo ID", List.of(Rule.cure(Ask.IDENTIFICATION)),
            "ID and signature", List.of(Rule.cure(Ask.IDENTIFICATION), Rule.cure(Ask.SIGNATURE)),
            "ID and registration", List.of(Rule.cure(Ask.IDENTIFICATION), Rule.cure(Ask.REGISTRATION)),
            "ID and residence", List.of(Rule.cure(Ask.IDENTIFICATION), Rule.cure(Ask.REGISTRATION)),
            "signature", List.of(Rule.cure(Ask.SIGNATURE)),
            "eligibility evidence", List.of(Rule.cure(Ask.ELIGIBILITY)));

    private static final Map<String, RulePack> PACKS = new HashMap<>();

    static List<PublishedRow> registration() {
        List<PublishedRow> rows = new ArrayList<>();
        for (List<String> cells : Csv.rows("/published/state-registration.csv")) {
            String method = cells.get(3).isEmpty() ? cells.get(2) : cells.get(2) + ", " + cells.get(3);
            rows.add(new PublishedRow(
                    "registration",
                    cells.get(0),
                    LocalDate.parse(cells.get(1)),
                    method,
                    LocalDate.parse(cells.get(4)),
                    "",
                    cells.get(5).equals("yes"),
                    cells.get(6)));
        }
        return rows;
    }

    static List<PublishedRow> afterTheElection() {
        List<PublishedRow> rows = new ArrayList<>();
        for (List<String> cells : Csv.rows("/published/state-cures.csv")) {
            rows.add(new PublishedRow(
                    "cure and decision",
                    cells.get(0),
                    LocalDate.parse(cells.get(1)),
                    cells.get(2),
                    LocalDate.parse(cells.get(3)),
                    cells.get(4),
                    cells.get(5).equals("yes"),
                    cells.get(6)));
        }
        return rows;
    }

    String key() {
        return state + " " + electionDay + " " + what;
    }

    /** What the pack says, in one line: {@code 2024-11-08 17:00}; a rule it does not have reads as nothing. */
    Set<String> said() {
        Set<String> said = new TreeSet<>();
        for (Rule rule : rules()) {
            Optional<Deadline> deadline = book().of(rule);
            said.add(deadline.map(this::line).orElse(""));
        }
        return said;
    }

    String published() {
        return (day + " " + hour).strip();
    }

    boolean agrees() {
        return said().equals(Set.of(published()));
    }

    private String line(Deadline deadline) {
        return (deadline.day() + " "
                        + (hour.isEmpty() ? "" : deadline.rule().time().spelled()))
                .strip();
    }

    private DeadlineBook book() {
        RulePack pack = PACKS.computeIfAbsent("us-" + state.toLowerCase(Locale.ROOT), RulePacks::load);
        return DeadlineBook.of(PackResolver.resolve(pack, electionDay, List.of()), Set.of());
    }

    /** Mail is judged by the postmark where the state has such a rule and the source does not speak of receipt. */
    private List<Rule> rules() {
        if (what.startsWith("decision")) {
            return List.of(Rules.DECISION);
        }
        if (AFTER.containsKey(what)) {
            return AFTER.get(what);
        }
        if (what.startsWith("in person")) {
            return List.of(Rules.REGISTER_IN_PERSON);
        }
        if (what.startsWith("online")) {
            return List.of(Rules.REGISTER_ONLINE);
        }
        boolean postmark = !what.contains("received")
                && book().of(Rules.REGISTER_MAIL_POSTMARK).isPresent();
        return List.of(postmark ? Rules.REGISTER_MAIL_POSTMARK : Rules.REGISTER_MAIL_RECEIVED);
    }
}
