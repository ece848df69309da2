package org.proviso.bench;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.proviso.Proviso;
import org.proviso.files.csv.CsvOutput;

/** Open linkage data with known truth, brought into the columns of a roll and envelopes and matched as any other. */
final class OpenData {

    private static final List<String> ROLL = List.of(
            "voter_id,last_name,first_name,middle_name,suffix,date_of_birth,house_number,street,unit,city,zip,id_last4"
                    .split(","));
    private static final List<String> ENVELOPES = List.of(
            "envelope_no,last_name,first_name,middle_name,suffix,date_of_birth,residence_address_line,unit,city,zip,id_last4"
                    .split(","));

    private final Path folder;
    private final Path work;
    private final PrintStream out;

    OpenData(Path folder, Path work, PrintStream out) {
        this.folder = folder;
        this.work = work;
        this.out = out;
    }

    void run() throws IOException, InterruptedException {
        Adapter febrl = new Adapter("febrl", "rec_id", OpenData::febrlPerson, OpenData::febrl);
        one("febrl-dataset1.csv", febrl);
        one("febrl-dataset2.csv", febrl);
        one("RLdata10000.csv", new Adapter("rldata", "row_id", row -> row.get("entity_id"), OpenData::rldata));
    }

    /** How a data set's rows are read: its id, the person behind, and the cells of name, date, home and number. */
    private record Adapter(String name, String id, Cell person, Cells cells) {}

    private interface Cell {
        String of(Map<String, String> row);
    }

    private interface Cells {
        List<String> of(Map<String, String> row);
    }

    /** The first record of a person is the roll's, the others are envelopes. */
    private void one(String file, Adapter adapter) throws IOException, InterruptedException {
        Map<String, String> first = new HashMap<>();
        Map<String, String> truth = new HashMap<>();
        List<Map<String, String>> rows = rows(folder.resolve(file));
        rows.sort((a, b) -> Boolean.compare(isCopy(a, adapter), isCopy(b, adapter)));
        CsvOutput.write(
                work.resolve("open-roll.csv"),
                ROLL,
                roll -> CsvOutput.write(work.resolve("open-envelopes.csv"), ENVELOPES, envelopes -> {
                    for (Map<String, String> row : rows) {
                        String id = row.get(adapter.id());
                        List<String> cells = adapter.cells().of(row);
                        String known = first.putIfAbsent(adapter.person().of(row), id);
                        if (known == null) {
                            roll.row(with(id, cells));
                        } else {
                            truth.put(id, known);
                            List<String> line = List.of((cells.get(5) + " " + cells.get(6)).strip());
                            envelopes.row(join(with(id, cells.subList(0, 5)), line, cells.subList(7, 11)));
                        }
                    }
                }));
        Run.of(
                List.of(),
                Proviso.class,
                "match",
                "--roll",
                work.resolve("open-roll.csv"),
                "--envelopes",
                work.resolve("open-envelopes.csv"),
                "--out",
                work.resolve("open-links.csv"));
        Truth known = new Truth(truth, Map.of());
        Links links = Links.read(work.resolve("open-links.csv"));
        out.println(file + ", sure and likely: " + links.quality(known, false));
        out.println(file + ", sure: " + links.quality(known, true));
    }

    private static boolean isCopy(Map<String, String> row, Adapter adapter) {
        return row.get(adapter.id()).contains("-dup");
    }

    @SafeVarargs
    private static List<String> join(List<String>... parts) {
        return List.of(parts).stream().flatMap(List::stream).toList();
    }

    private static List<String> with(String id, List<String> cells) {
        return join(List.of(id), cells);
    }

    private static String febrlPerson(Map<String, String> row) {
        return row.get("rec_id").split("-")[1];
    }

    private static List<String> febrl(Map<String, String> row) {
        String born = row.get("date_of_birth");
        String number = row.get("soc_sec_id");
        return List.of(
                row.get("surname"),
                row.get("given_name"),
                "",
                "",
                born.length() == 8 ? date(born.substring(0, 4), born.substring(4, 6), born.substring(6)) : "",
                row.get("street_number"),
                row.get("address_1"),
                "",
                row.get("suburb"),
                row.get("postcode"),
                number.length() < 4 ? "" : number.substring(number.length() - 4));
    }

    private static List<String> rldata(Map<String, String> row) {
        String last = (row.get("lname_c1") + " " + row.get("lname_c2")).strip();
        String born = date(row.get("by"), row.get("bm"), row.get("bd"));
        return List.of(last, row.get("fname_c1"), row.get("fname_c2"), "", born, "", "", "", "", "", "");
    }

    /** A date that the calendar has, or empty. */
    private static String date(String year, String month, String day) {
        try {
            return java.time.LocalDate.of(Integer.parseInt(year), Integer.parseInt(month), Integer.parseInt(day))
                    .toString();
        } catch (java.time.DateTimeException | NumberFormatException e) {
            return "";
        }
    }

    private static List<Map<String, String>> rows(Path file) throws IOException {
        List<String> lines = Files.readAllLines(file);
        String[] header = lines.get(0).split(",");
        List<Map<String, String>> rows = new java.util.ArrayList<>();
        for (String line : lines.subList(1, lines.size())) {
            String[] cells = line.split(",", -1);
            Map<String, String> row = new HashMap<>();
            for (int i = 0; i < header.length; i++) {
                String cell = i < cells.length ? cells[i].strip() : "";
                row.put(header[i].strip(), cell.equals("NA") ? "" : cell);
            }
            rows.add(row);
        }
        return rows;
    }
}
