package org.proviso.sample;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.proviso.sample.county.FileColumns;
import org.proviso.sample.county.FileRow;

/** Writes a sample election as a folder, and its truth in a file beside the folders. */
final class FolderWriter {

    private final Path out;

    FolderWriter(Path out) {
        this.out = out;
    }

    /** Replaces the election's files; pictures of an earlier run do not stay behind. */
    void write(SampleElection election) throws IOException {
        Path folder = out.resolve(election.id());
        clear(folder.resolve("signatures"));
        Files.createDirectories(folder);
        Files.writeString(folder.resolve("election.yaml"), election.electionYaml());
        for (Map.Entry<String, List<FileRow>> table : election.tables().entrySet()) {
            table(folder.resolve(table.getKey()), columns(table.getKey()), table.getValue());
        }
        for (Map.Entry<String, byte[]> picture : election.pictures().entrySet()) {
            Path file = folder.resolve(picture.getKey());
            Files.createDirectories(file.getParent());
            Files.write(file, picture.getValue());
        }
        Files.createDirectories(out.resolve("truth"));
        table(out.resolve("truth").resolve(election.id() + ".csv"), FileColumns.TRUTH, election.truth());
    }

    private static void clear(Path folder) throws IOException {
        if (!Files.exists(folder)) {
            return;
        }
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }

    private static void table(Path file, List<String> columns, List<FileRow> rows) throws IOException {
        try (CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(file)) {
            csv.writeRecord(columns);
            for (FileRow row : rows) {
                csv.writeRecord(row.values());
            }
        }
    }

    private static List<String> columns(String file) {
        return switch (file) {
            case "contests.csv" -> FileColumns.CONTESTS;
            case "ballot-styles.csv" -> FileColumns.STYLES;
            case "precincts.csv" -> FileColumns.PRECINCTS;
            case "streets.csv" -> FileColumns.STREETS;
            case "roll.csv" -> FileColumns.ROLL;
            case "mail-ballots.csv" -> FileColumns.MAIL;
            case "check-ins.csv" -> FileColumns.CHECK_INS;
            case "voted-elsewhere.csv" -> FileColumns.ELSEWHERE;
            case "transmittals.csv" -> FileColumns.TRANSMITTALS;
            case "envelopes.csv" -> FileColumns.ENVELOPES;
            default -> throw new IllegalArgumentException("no columns for " + file);
        };
    }
}
