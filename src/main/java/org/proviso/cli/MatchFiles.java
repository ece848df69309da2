package org.proviso.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Consumer;
import java.util.function.LongConsumer;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.proviso.core.Address;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.Key;
import org.proviso.core.PersonName;
import org.proviso.core.VoterId;
import org.proviso.core.matching.BestCandidate;
import org.proviso.core.matching.Candidate;
import org.proviso.core.matching.Match;
import org.proviso.core.matching.MatchQuery;
import org.proviso.core.matching.index.RollEntry;
import org.proviso.core.matching.index.RollIndex;
import org.proviso.core.matching.index.RollIndexBuilder;
import org.proviso.core.matching.spelling.WrittenBirthDate;
import org.proviso.files.SetAside;
import org.proviso.files.csv.CsvColumns;
import org.proviso.files.csv.CsvOutput;
import org.proviso.files.csv.CsvRow;
import org.proviso.files.csv.CsvTable;
import org.proviso.files.election.EnvelopeReader;
import org.proviso.files.roll.RollReader;
import org.proviso.files.roll.RollScan;

/**
 * The files of the {@code match} verb. It needs only the columns that tell people apart, so a list that is no whole roll
 * will do; the other columns of the formats are passed over without a word.
 */
final class MatchFiles {

    private static final CsvColumns ROLL = needing(
                    RollReader.columns(),
                    List.of(
                            "voter_id",
                            "last_name",
                            "first_name",
                            "middle_name",
                            "suffix",
                            "date_of_birth",
                            "house_number",
                            "street",
                            "unit",
                            "city",
                            "zip",
                            "id_last4"))
            .unique("voter_id");

    private static final CsvColumns ENVELOPES = needing(
                    EnvelopeReader.columns(),
                    List.of(
                            "envelope_no",
                            "last_name",
                            "first_name",
                            "middle_name",
                            "suffix",
                            "date_of_birth",
                            "residence_address_line",
                            "city",
                            "zip",
                            "id_last4"))
            .unique("envelope_no");

    private MatchFiles() {}

    /** Reads the roll into the index by several threads; a file that is not plain is read row by row with care. */
    static RollIndex index(
            Path file, int threads, Consumer<String> warn, @Nullable SetAside aside, LongConsumer progress) {
        return RollScan.read(file, ROLL, threads, warn, progress)
                .map(RollIndex::of)
                .orElseGet(() -> index(file, warning -> {}, aside));
    }

    /** Reads the roll row by row into the index; no voter is held as an object. */
    static RollIndex index(Path file, Consumer<String> warn) {
        return index(file, warn, null);
    }

    private static RollIndex index(Path file, Consumer<String> warn, @Nullable SetAside aside) {
        RollIndexBuilder builder = RollIndex.builder();
        CsvTable.each(file, ROLL, warn, aside, MatchFiles::entries, (line, entry) -> builder.add(entry));
        return builder.build();
    }

    private static Supplier<RollEntry> entries(CsvTable table) {
        RollCells cells = new RollCells(table);
        return () -> cells.entry(table.row());
    }

    static List<MatchQuery> queries(Path file, Consumer<String> warn) {
        return new ArrayList<>(
                CsvTable.read(file, ENVELOPES, warn, MatchFiles::query).values());
    }

    /** Writes the pairings in the order of the envelopes, whole or not at all. */
    static void write(Path file, List<BestCandidate> pairings) {
        List<String> header = List.of("envelope_no", "voter_id", "probability", "verdict");
        CsvOutput.write(
                file,
                header,
                output -> pairings.forEach(pairing -> output.row(
                        pairing.envelopeNo().value(),
                        Objects.requireNonNullElse(Key.text(pairing.voterId()), ""),
                        sixPlaces(pairing.probability()),
                        pairing.verdict().code())));
    }

    /** Writes each envelope's candidates, best first, with what speaks for and against each. */
    static void writeCandidates(Path file, List<Match> matches) {
        List<String> header = List.of("envelope_no", "place", "voter_id", "probability", "reason", "evidence");
        CsvOutput.write(file, header, output -> {
            for (Match match : matches) {
                for (int i = 0; i < match.candidates().size(); i++) {
                    Candidate candidate = match.candidates().get(i);
                    output.row(
                            match.envelopeNo().value(),
                            String.valueOf(i + 1),
                            candidate.voterId().value(),
                            sixPlaces(candidate.probability()),
                            i == 0 ? match.reason() : "",
                            String.join(" ", candidate.evidence()));
                }
            }
        });
    }

    /** A share with six places after the point; a formatter would take longer than the matching. */
    private static String sixPlaces(double share) {
        String millionths = String.valueOf(1_000_000_000L + Math.round(share * 1_000_000));
        return millionths.charAt(3) + "." + millionths.substring(4);
    }

    private static MatchQuery query(CsvRow row) {
        PersonName name = new PersonName(
                row.text("last_name"), row.text("first_name"), row.text("middle_name"), row.text("suffix"));
        String former = row.text("former_address_line");
        return new MatchQuery(
                new EnvelopeNumber(row.requiredKey("envelope_no")),
                name,
                row.text("former_name"),
                EnvelopeReader.birthDate(row),
                WrittenBirthDate.read(EnvelopeReader.birthDateAsWritten(row)),
                new Address(row.text("residence_address_line"), row.text("unit"), row.text("city"), row.text("zip")),
                former.isBlank() ? Address.NONE : new Address(former, "", "", ""),
                row.text("id_last4"),
                row.text("drivers_license"));
    }

    /** The format's columns, of which only these must be there. */
    private static CsvColumns needing(CsvColumns format, List<String> needed) {
        List<String> optional = new ArrayList<>(format.required());
        optional.addAll(format.optional());
        optional.removeAll(needed);
        return new CsvColumns(needed, optional, List.of());
    }

    /** Where the roll's cells stand, asked once for a million rows. */
    @SuppressWarnings("ArrayRecordComponent") // Never compared.
    private record RollCells(int id, int[] name, int former, int born, int[] home, int last4, int license) {

        RollCells(CsvTable table) {
            this(
                    table.column("voter_id"),
                    places(table, "last_name", "first_name", "middle_name", "suffix"),
                    table.column("former_name"),
                    table.column("date_of_birth"),
                    places(table, "house_number", "street", "unit", "zip"),
                    table.column("id_last4"),
                    table.column("drivers_license"));
        }

        private static int[] places(CsvTable table, String... columns) {
            return List.of(columns).stream().mapToInt(table::column).toArray();
        }

        RollEntry entry(CsvRow row) {
            return new RollEntry(
                    new VoterId(row.requiredKey(id)),
                    new PersonName(row.text(name[0]), row.text(name[1]), row.text(name[2]), row.text(name[3])),
                    row.text(former),
                    row.date(born),
                    row.text(home[0]),
                    row.text(home[1]),
                    row.text(home[2]),
                    row.text(home[3]),
                    row.text(last4),
                    row.text(license));
        }
    }
}
