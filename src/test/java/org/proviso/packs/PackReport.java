package org.proviso.packs;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.proviso.core.rules.Basis;
import org.proviso.core.rules.DatedValue;
import org.proviso.core.rules.Rule;
import org.proviso.core.rules.RulePack;
import org.proviso.files.packs.RulePacks;

/**
 * Counts what the states' packs know and how they agree with published deadlines, as the tables of docs/rules.md.
 * {@code main} prints them; a test compares the docs with them.
 */
public final class PackReport {

    /** The election for which the values are counted: the coming general one. */
    private static final LocalDate ELECTION_DAY = LocalDate.of(2026, 11, 3);

    private PackReport() {}

    public static void main(String[] arguments) {
        System.out.println(states());
        System.out.println(agreement());
        System.out.println(disagreements());
    }

    static List<String> stateNames() {
        return RulePacks.bundled().stream()
                .filter(name -> name.startsWith("us-"))
                .toList();
    }

    /** Each state with how many of its own values are read, remembered or unknown, and how its deadlines agree. */
    static String states() {
        Map<String, int[]> counted = agreeing();
        List<String> lines = new ArrayList<>(List.of(
                "| state | read | from memory | unknown | published deadlines it agrees with |",
                "| --- | --: | --: | --: | --- |"));
        for (String name : stateNames()) {
            Map<Basis, Integer> known = known(RulePacks.load(name));
            int[] rows = counted.getOrDefault(name.substring(3).toUpperCase(Locale.ROOT), new int[2]);
            lines.add("| " + RulePacks.load(name).name() + " | " + known.getOrDefault(Basis.READ, 0) + " | "
                    + known.getOrDefault(Basis.MEMORY, 0) + " | " + known.getOrDefault(Basis.UNKNOWN, 0) + " | "
                    + (rows[1] == 0 ? "none published" : rows[0] + " of " + rows[1]) + " |");
        }
        return String.join("\n", lines);
    }

    /** The pack's own values in force, without what it takes over from the federal floor. */
    private static Map<Basis, Integer> known(RulePack pack) {
        RulePack floor = RulePacks.load("us");
        Map<Basis, Integer> known = new EnumMap<>(Basis.class);
        for (Rule rule : Rule.all()) {
            DatedValue value = pack.inForce(rule, ELECTION_DAY).orElse(null);
            if (value != null && !value.equals(floor.inForce(rule, ELECTION_DAY).orElse(null))) {
                known.merge(value.basis(), 1, Integer::sum);
            }
        }
        return known;
    }

    /** By state, the rows marked certain: how many agree, of how many. */
    private static Map<String, int[]> agreeing() {
        Map<String, int[]> counted = new TreeMap<>();
        for (PublishedRow row : rows()) {
            if (row.certain()) {
                int[] both = counted.computeIfAbsent(row.state(), state -> new int[2]);
                both[0] += row.agrees() ? 1 : 0;
                both[1]++;
            }
        }
        return counted;
    }

    static String agreement() {
        List<String> lines = new ArrayList<>(List.of(
                "| table | certain rows | agree | uncertain rows | agree |", "| --- | --: | --: | --: | --: |"));
        for (List<PublishedRow> table : List.of(PublishedRow.registration(), PublishedRow.afterTheElection())) {
            lines.add("| " + table.get(0).table() + " | " + count(table, true, false) + " | " + count(table, true, true)
                    + " | " + count(table, false, false) + " | " + count(table, false, true) + " |");
        }
        return String.join("\n", lines);
    }

    private static long count(List<PublishedRow> table, boolean certain, boolean agreeing) {
        return table.stream()
                .filter(row -> row.certain() == certain && (!agreeing || row.agrees()))
                .count();
    }

    /** The rows that disagree, certain or not, with what the pack says. */
    static String disagreements() {
        List<String> lines =
                new ArrayList<>(List.of("| row | published | the pack says | why |", "| --- | --- | --- | --- |"));
        Map<String, String> reasons = reasons();
        for (PublishedRow row : rows()) {
            if (!row.agrees()) {
                lines.add("| " + row.key() + (row.certain() ? "" : " (uncertain)") + " | " + row.published() + " | "
                        + String.join(", ", row.said()) + " | " + reasons.getOrDefault(row.key(), "") + " |");
            }
        }
        return String.join("\n", lines);
    }

    /** Why a row disagrees, by its key, as somebody found out. */
    static Map<String, String> reasons() {
        Map<String, String> reasons = new TreeMap<>();
        Csv.rows("/published/disagreements.csv").forEach(cells -> reasons.put(cells.get(0), cells.get(1)));
        return reasons;
    }

    static List<PublishedRow> rows() {
        List<PublishedRow> rows = new ArrayList<>(PublishedRow.registration());
        rows.addAll(PublishedRow.afterTheElection());
        return rows;
    }
}
