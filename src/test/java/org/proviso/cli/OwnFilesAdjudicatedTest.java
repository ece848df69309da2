package org.proviso.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.proviso.core.chain.Sha256;
import org.proviso.files.csv.CsvColumns;
import org.proviso.files.csv.CsvTable;

/** An office with exports in its own shapes gets the same adjudication as with files in our columns, byte for byte. */
class OwnFilesAdjudicatedTest {

    private static final Path SAMPLE = Path.of("sample-cases/tamarack-primary");

    @TempDir
    Path home;

    private Path folder;

    @BeforeEach
    void the_office_has_a_folder_with_its_own_exports() throws IOException {
        folder = home.resolve(SAMPLE.getFileName());
        try (Stream<Path> files = Files.walk(SAMPLE)) {
            for (Path file : files.toList()) {
                Path copy = folder.resolve(SAMPLE.relativize(file).toString());
                Object unused = Files.isDirectory(file) ? Files.createDirectories(copy) : Files.copy(file, copy);
            }
        }
        roll(folder.resolve("VOTERS_20260805.txt"));
        mailBallots(folder.resolve("mail.dat"));
        checkIns(folder.resolve("epb 2026-08-04.tsv"));
        for (String ours : List.of("roll.csv", "mail-ballots.csv", "check-ins.csv")) {
            Files.delete(folder.resolve(ours));
        }
        Files.createDirectory(folder.resolve("mappings"));
    }

    @Test
    void proposed_mappings_in_the_folder_give_the_same_bytes() throws IOException {
        propose("VOTERS_20260805.txt", "roll", "roll.yaml");
        propose("mail.dat", "mail_ballots", "mail.yaml", "--layout", layout().toString());
        checkInMapping(folder.resolve("mappings/check-ins.yaml"));

        assertThat(adjudicated(folder, "own")).isEqualTo(adjudicated(SAMPLE, "plain"));
    }

    @Test
    void mappings_named_by_hand_give_the_same_bytes() throws IOException {
        propose("VOTERS_20260805.txt", "roll", "roll.yaml");
        propose("mail.dat", "mail_ballots", "mail.yaml", "--layout", layout().toString());
        Path mappings = Files.move(folder.resolve("mappings"), home.resolve("kept"));
        checkInMapping(mappings.resolve("check-ins.yaml"));

        Map<String, String> own = adjudicated(
                folder,
                "own",
                "--mapping=" + mappings.resolve("roll.yaml"),
                "--mapping=" + mappings.resolve("mail.yaml"),
                "--mapping=" + mappings.resolve("check-ins.yaml"));

        assertThat(own).isEqualTo(adjudicated(SAMPLE, "plain"));
    }

    @Test
    void match_reads_the_offices_roll_by_its_mapping() throws IOException {
        propose("VOTERS_20260805.txt", "roll", "roll.yaml");
        Path own = home.resolve("own.csv");
        Path plain = home.resolve("plain.csv");

        Shell ownRun = Shell.run(
                "match",
                "--roll=" + folder.resolve("VOTERS_20260805.txt"),
                "--envelopes=" + SAMPLE.resolve("envelopes.csv"),
                "--mapping=" + folder.resolve("mappings/roll.yaml"),
                "--out=" + own);
        Shell.run(
                "match",
                "--roll=" + SAMPLE.resolve("roll.csv"),
                "--envelopes=" + SAMPLE.resolve("envelopes.csv"),
                "--out=" + plain);

        assertThat(ownRun.exit()).as(ownRun.err()).isZero();
        assertThat(own).hasSameTextualContentAs(plain);
    }

    @Test
    void an_error_is_told_with_the_offices_file_line_and_column_and_nothing_is_written() throws IOException {
        propose("VOTERS_20260805.txt", "roll", "roll.yaml");
        propose("mail.dat", "mail_ballots", "mail.yaml", "--layout", layout().toString());
        checkInMapping(folder.resolve("mappings/check-ins.yaml"));
        Path voters = folder.resolve("VOTERS_20260805.txt");
        List<String> lines = new ArrayList<>(Files.readAllLines(voters, Charset.forName("windows-1252")));
        lines.set(41, lines.get(41).replaceAll("\\|[AIPC]\\|", "|Q|"));
        Files.write(voters, lines, Charset.forName("windows-1252"));

        Shell run = Shell.run("adjudicate", folder.toString(), "--out=" + home.resolve("none"));

        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err())
                .contains(
                        "VOTERS_20260805.txt line 42, column STS: \"Q\" is not one of active, inactive, pending, cancelled"
                                + " (read as status)");
        assertThat(home.resolve("none")).doesNotExist();
    }

    @Test
    void two_files_for_one_mapping_and_a_mapping_without_a_file_are_refused() throws IOException {
        propose("VOTERS_20260805.txt", "roll", "roll.yaml");
        Path mapping = folder.resolve("mappings/roll.yaml");
        Files.copy(folder.resolve("VOTERS_20260805.txt"), folder.resolve("VOTERS_20260806.txt"));

        Shell two = Shell.run("adjudicate", folder.toString(), "--out=" + home.resolve("none"));
        Shell none =
                Shell.run("adjudicate", SAMPLE.toString(), "--out=" + home.resolve("none"), "--mapping=" + mapping);

        assertThat(two.err()).contains("VOTERS_20260806.txt: found beside VOTERS_20260805.txt");
        assertThat(none.err()).contains("roll.yaml: no file in").contains("is named VOTERS_*.txt");
    }

    @Test
    void a_missing_file_is_missing_from_the_offices_folder() throws IOException {
        propose("VOTERS_20260805.txt", "roll", "roll.yaml");
        Files.delete(folder.resolve("contests.csv"));

        Shell run = Shell.run("adjudicate", folder.toString(), "--out=" + home.resolve("none"));

        assertThat(run.err()).contains("contests.csv: is missing from " + folder.toAbsolutePath());
    }

    @Test
    void the_proposal_says_what_was_recognized_and_what_does_not_fit() {
        Shell run = propose("VOTERS_20260805.txt", "roll", "roll.yaml");

        assertThat(run.out())
                .contains("VOTERS_20260805.txt: 5,000 rows for roll.csv", "delimiter  pipe", "header     yes")
                .contains("DOB -> date_of_birth, MM/DD/YYYY", "STS -> status, A = active (")
                .contains("RES_ADDR -> house_number, a part of address line", "every value fits");
    }

    @Test
    void a_file_that_lacks_what_every_row_needs_ends_with_1() throws IOException {
        Path file = Files.writeString(home.resolve("few.csv"), "Voter ID,Party\n1,Harbor\n");

        Shell run = Shell.run("propose-mapping", file.toString(), "--list=roll", "--out=" + home.resolve("few.yaml"));

        assertThat(run.exit()).isEqualTo(1);
        assertThat(run.out()).contains("every row needs: status");
    }

    private Shell propose(String file, String list, String mapping, String... more) {
        List<String> arguments = new ArrayList<>(List.of(
                "propose-mapping",
                folder.resolve(file).toString(),
                "--list=" + list,
                "--year=2026",
                "--out=" + folder.resolve("mappings").resolve(mapping)));
        arguments.addAll(List.of(more));
        Shell run = Shell.run(arguments.toArray(String[]::new));
        assertThat(run.exit()).as(run.out() + run.err()).isZero();
        return run;
    }

    private Map<String, String> adjudicated(Path election, String name, String... more) throws IOException {
        Path out = home.resolve(name);
        List<String> arguments = new ArrayList<>(List.of("adjudicate", election.toString(), "--out=" + out));
        arguments.addAll(List.of(more));
        Shell run = Shell.run(arguments.toArray(String[]::new));
        assertThat(run.exit()).as(run.err()).isZero();
        Map<String, String> hashes = new TreeMap<>();
        try (Stream<Path> files = Files.walk(out)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                hashes.put(out.relativize(file).toString(), Sha256.of(Files.readString(file)));
            }
        }
        return hashes;
    }

    /** Other names, pipes, Windows-1252, one address column, American dates, letters for codes. */
    private static void roll(Path file) throws IOException {
        Map<String, String> names = new LinkedHashMap<>();
        names.put("voter_id", "Voter ID");
        names.put("last_name", "LNAME");
        names.put("first_name", "FNAME");
        names.put("middle_name", "MNAME");
        names.put("suffix", "SFX");
        names.put("date_of_birth", "DOB");
        names.put("unit", "APT");
        names.put("city", "TOWN");
        names.put("zip", "ZIP");
        names.put("precinct", "PCT");
        names.put("split", "PORTION");
        names.put("registration_date", "REG_DT");
        names.put("registration_channel", "REG_SOURCE");
        names.put("received_on", "RECEIVED");
        names.put("status", "STS");
        names.put("status_reason", "REASON");
        names.put("status_on", "STATUS_DT");
        names.put("confirmation_sent_on", "CONF_SENT");
        names.put("last_voted_on", "LAST_VOTED");
        names.put("id_last4", "SSN4");
        names.put("drivers_license", "DL");
        names.put("party", "PARTY_CD");
        names.put("party_since", "PARTY_DATE");
        names.put("id_required", "HAVA_ID");
        names.put("number_matched", "VERIFIED");
        names.put("entitlement", "ELIGIBILITY");
        names.put("former_name", "MAIDEN_NAME");
        names.put("confidential", "ACP");
        names.put("mail_address", "MAIL_ADDR");
        names.put("language", "LANG");
        List<String> lines = new ArrayList<>(List.of("RES_ADDR|" + String.join("|", names.values())));
        for (Map<String, String> row : rows("roll.csv")) {
            List<String> cells = new ArrayList<>(List.of(row.get("house_number") + " " + row.get("street")));
            names.keySet().forEach(name -> cells.add(ofOffice(name, row.getOrDefault(name, ""))));
            lines.add(String.join("|", cells));
        }
        Files.write(file, lines, Charset.forName("windows-1252"));
    }

    private static String ofOffice(String name, String value) {
        if (value.matches("\\d{4}-\\d\\d-\\d\\d")) {
            return LocalDate.parse(value).format(DateTimeFormatter.ofPattern("MM/dd/uuuu"));
        }
        return switch (name) {
            case "status" -> value.substring(0, 1).toUpperCase(Locale.ROOT);
            case "id_required", "number_matched", "confidential" -> value.isEmpty() ? "" : value.substring(0, 1);
            case "registration_channel" -> value.equals("motor_vehicle") ? "DMV" : value;
            default -> value;
        };
    }

    private Path layout() throws IOException {
        return Files.writeString(
                home.resolve("layout.csv"),
                "name,from,to\nVOTER ID,1,10\nSERIAL,11,20\nDATE MAILED,21,28\nBALLOT STATUS,29,42\nSTATUS DATE,43,50\n");
    }

    private static void mailBallots(Path file) throws IOException {
        List<String> lines = new ArrayList<>();
        for (Map<String, String> row : rows("mail-ballots.csv")) {
            lines.add(String.format(
                    Locale.ROOT,
                    "%-10s%-10s%-8s%-14s%-8s",
                    row.get("voter_id"),
                    row.get("ballot_serial"),
                    row.get("issued_on").replace("-", ""),
                    row.get("state").replace("outstanding", "SENT"),
                    row.get("state_on").replace("-", "")));
        }
        Files.write(file, lines, StandardCharsets.UTF_8);
    }

    private static void checkIns(Path file) throws IOException {
        List<String> lines = new ArrayList<>();
        for (Map<String, String> row : rows("check-ins.csv")) {
            lines.add(String.join(
                    "\t",
                    row.get("voting_location"),
                    time(row.get("at")),
                    row.get("voter_id"),
                    row.get("kind").substring(0, 1),
                    row.get("ballot_issued").replace("yes", "1").replace("no", "0"),
                    time(row.get("cancelled_at"))));
        }
        Files.write(file, lines, StandardCharsets.UTF_8);
    }

    private static String time(String value) {
        return value.isEmpty()
                ? ""
                : LocalDateTime.parse(value).format(DateTimeFormatter.ofPattern("M/d/uuuu h:mm a", Locale.US));
    }

    private static void checkInMapping(Path file) throws IOException {
        Files.writeString(file, """
                mapping: poll books
                version: 1
                list: check_ins
                files: "epb *.tsv"
                source:
                  encoding: UTF-8
                  delimiter: tab
                  quoted: no
                  header: no
                  columns: [place, time, voter, kind, ballot, cancelled]
                fields:
                  voter_id: {from: voter}
                  voting_location: {from: place}
                  at: {from: time, date: MM/DD/YYYY HH:MM AM}
                  kind: {from: kind, codes: {r: regular, p: provisional}}
                  ballot_issued: {from: ballot, codes: {"1": yes, "0": no}}
                  cancelled_at: {from: cancelled, date: MM/DD/YYYY HH:MM AM}
                """);
    }

    private static List<Map<String, String>> rows(String name) throws IOException {
        List<Map<String, String>> rows = new ArrayList<>();
        List<String> header =
                List.of(Files.readAllLines(SAMPLE.resolve(name)).get(0).split(","));
        CsvTable.each(
                SAMPLE.resolve(name),
                new CsvColumns(header, List.of(), List.of()),
                warning -> {},
                table -> () -> {
                    Map<String, String> row = new LinkedHashMap<>();
                    header.forEach(column -> row.put(column, table.row().text(column)));
                    return row;
                },
                (line, row) -> rows.add(row));
        return rows;
    }
}
