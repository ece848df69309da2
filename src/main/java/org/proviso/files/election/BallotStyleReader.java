package org.proviso.files.election;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import org.proviso.core.BallotStyle;
import org.proviso.files.InputException;
import org.proviso.files.csv.CsvColumns;
import org.proviso.files.csv.CsvTable;
import org.proviso.files.csv.NumberedRows;

/** Reads {@code ballot-styles.csv}: one row for each contest of each style. */
public final class BallotStyleReader {

    private static final CsvColumns COLUMNS =
            CsvColumns.of("ballot_style", "contest_id", "party?").unique("ballot_style", "contest_id");

    private BallotStyleReader() {}

    /** One row: this style has this contest. */
    public record StyleContest(String style, String contestId, String party) {}

    public static NumberedRows<StyleContest> read(Path file, Consumer<String> warn) {
        return CsvTable.read(
                file,
                COLUMNS,
                warn,
                row -> new StyleContest(
                        row.requiredKey("ballot_style"), row.requiredKey("contest_id"), row.key("party")));
    }

    /** The rows grouped to styles, in the order in which they first appear; a style has one party or none. */
    public static List<BallotStyle> styles(NumberedRows<StyleContest> rows) {
        Map<String, Set<String>> contests = new LinkedHashMap<>();
        Map<String, String> parties = new LinkedHashMap<>();
        for (int i = 0; i < rows.values().size(); i++) {
            StyleContest line = rows.values().get(i);
            contests.computeIfAbsent(line.style(), style -> new LinkedHashSet<>())
                    .add(line.contestId());
            String party = parties.putIfAbsent(line.style(), line.party());
            if (party != null && !party.equals(line.party())) {
                String reason = InputException.quoted(line.party()) + ", but style " + line.style() + " had ";
                throw rows.wrong(i, "party", reason + InputException.quoted(party) + " earlier");
            }
        }
        List<BallotStyle> styles = new ArrayList<>();
        contests.forEach((style, ids) ->
                styles.add(new BallotStyle(style, parties.getOrDefault(style, ""), Collections.unmodifiableSet(ids))));
        return List.copyOf(styles);
    }
}
