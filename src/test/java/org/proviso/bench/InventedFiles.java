package org.proviso.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.proviso.files.csv.CsvOutput;

/** Writes a roll, envelopes with known voters, and the truth. The same seed gives the same bytes. */
final class InventedFiles {

    static final double ON_ROLL = 0.88;

    private static final List<String> ROLL = List.of(
            ("voter_id,last_name,first_name,middle_name,suffix,date_of_birth,house_number,street,unit,city,zip,precinct,"
                            + "registration_date,status,id_last4,drivers_license,party,id_required")
                    .split(","));
    private static final List<String> ENVELOPES = List.of(
            ("envelope_no,last_name,first_name,middle_name,suffix,date_of_birth,residence_address_line,unit,city,zip,"
                            + "former_address_line,id_last4")
                    .split(","));

    private final Path folder;
    private final SplittableRandom random;
    private final Families families;
    private final Writing writing;
    private final int voters;
    private final int envelopes;
    private final List<Sheet> sheets = new ArrayList<>();

    InventedFiles(Path folder, @Nullable Path names, long seed, int voters, int envelopes) throws IOException {
        this.folder = Files.createDirectories(folder);
        this.voters = voters;
        this.envelopes = envelopes;
        random = new SplittableRandom(seed);
        NameTables tables = NameTables.of(names);
        families = new Families(random.split(), tables, new Town(random.split(), voters));
        writing = new Writing(families, random.split(), tables.nicknames());
    }

    /** Writes roll.csv, envelopes.csv in no order, the same without last four, and truth.csv. */
    void write() {
        CsvOutput.write(folder.resolve("roll.csv"), ROLL, this::fill);
        for (int i = sheets.size() - 1; i > 0; i--) {
            Collections.swap(sheets, i, random.nextInt(i + 1));
        }
        writeEnvelopes("envelopes.csv", true);
        writeEnvelopes("envelopes-no-last4.csv", false);
        CsvOutput.write(folder.resolve("truth.csv"), List.of("envelope_no", "voter_id", "kinds"), out -> {
            for (int i = 0; i < sheets.size(); i++) {
                Sheet sheet = sheets.get(i);
                String kinds = sheet.kinds().stream().map(Enum::name).collect(Collectors.joining(";"));
                out.row(number(i), sheet.voterId(), kinds);
            }
        });
    }

    private void writeEnvelopes(String file, boolean withLast4) {
        CsvOutput.write(folder.resolve(file), ENVELOPES, out -> {
            for (int i = 0; i < sheets.size(); i++) {
                List<String> cells = new ArrayList<>(sheets.get(i).cells());
                cells.add(0, number(i));
                if (!withLast4) {
                    cells.set(cells.size() - 1, "");
                }
                out.row(cells);
            }
        });
    }

    private static String number(int place) {
        return "E" + (1_000_001 + place);
    }

    /** Each voter is taken with the chance that leaves exactly the wished number of envelopes at the end. */
    private void fill(CsvOutput roll) {
        int made = 0;
        while (made < voters) {
            List<Person> household = families.household();
            for (Person person : household.subList(0, Math.min(household.size(), voters - made))) {
                roll.row(rollCells(person));
                if (random.nextInt(voters - made++) < envelopes - sheets.size()) {
                    envelope(person, household);
                }
            }
        }
    }

    private void envelope(Person voter, List<Person> household) {
        if (random.nextDouble() < ON_ROLL) {
            put(voter, voter.id(), kin(voter, household));
            if (random.nextInt(300) == 0 && sheets.size() < envelopes) {
                put(voter, voter.id(), kin(voter, household));
            }
            return;
        }
        switch (random.nextInt(12)) {
            case 0 -> put(families.twinOf(voter), "", EnumSet.of(Kind.TWIN));
            case 1 -> put(families.childWithNameOf(voter), "", EnumSet.of(Kind.CHILD_NAMED));
            case 2, 3 -> put(families.childOf(voter), "", EnumSet.of(Kind.CHILD));
            case 4, 5 -> put(families.namesakeOf(voter), "", EnumSet.of(Kind.NAMESAKE));
            default -> put(families.stranger(), "", EnumSet.of(Kind.STRANGER));
        }
    }

    private void put(Person person, String voterId, Set<Kind> kinds) {
        Writing.Written written = writing.envelope(person, !voterId.isEmpty());
        Set<Kind> all = EnumSet.copyOf(kinds);
        all.addAll(written.kinds());
        if (all.isEmpty()) {
            all.add(Kind.CLEAN);
        }
        sheets.add(new Sheet(voterId, written.cells(), all));
    }

    private record Sheet(String voterId, List<String> cells, Set<Kind> kinds) {}

    private static Set<Kind> kin(Person voter, List<Person> household) {
        Set<Kind> kinds = EnumSet.noneOf(Kind.class);
        for (Person other : household) {
            if (other != voter && other.last().equals(voter.last())) {
                kinds.addAll(other.born().equals(voter.born()) ? Set.of(Kind.TWIN_TOO) : Set.of());
                kinds.addAll(other.first().equals(voter.first()) ? Set.of(Kind.NAME_TOO) : Set.of());
            }
        }
        return kinds;
    }

    /** The roll has its own gaps: no last four for one in twelve, a placeholder date for one in three hundred. */
    private String[] rollCells(Person person) {
        Person.Home home = person.home();
        String middle = random.nextInt(10) == 0 && !person.middle().isEmpty()
                ? person.middle().substring(0, 1)
                : person.middle();
        return new String[] {
            person.id(),
            person.last(),
            person.first(),
            middle,
            person.suffix(),
            random.nextInt(300) == 0 ? "1900-01-01" : person.born().toString(),
            String.valueOf(home.house()),
            home.street(),
            home.unit(),
            home.city(),
            home.zip(),
            "P-" + home.zip(),
            "2016-02-0" + (1 + random.nextInt(9)),
            random.nextInt(9) == 0 ? "inactive" : "active",
            random.nextInt(12) == 0 ? "" : person.last4(),
            "",
            "",
            "no"
        };
    }
}
