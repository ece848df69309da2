package org.proviso.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.proviso.files.csv.CsvOutput;
import org.proviso.sample.county.FileColumns;
import org.proviso.sample.county.FileRow;

/**
 * An invented election folder of any size. The people are those of {@link Families}, the ballots those of the sample; voters
 * are drawn one after the other, and nothing is kept in memory. There are no signature images. The same seed
 * gives the same bytes.
 */
final class InventedElection {

    private static final LocalDate DAY = LocalDate.of(2026, 11, 3);
    private static final double MAIL = 0.3;
    private static final double CHECKED_IN = 0.28;
    private static final int STYLES = 12;
    private static final Path BALLOTS = Path.of("sample-cases", "tamarack-general");

    private static final List<String> ROLL = columns("voter_id,last_name,first_name,middle_name,suffix,date_of_birth,"
            + "house_number,street,unit,city,zip,precinct,registration_date,status,id_last4,drivers_license,party,"
            + "id_required,number_matched,entitlement,language");
    /** What a person wrote, in the order of {@link Writing}. */
    private static final List<String> WRITTEN = columns("last_name,first_name,middle_name,suffix,date_of_birth,"
            + "residence_address_line,unit,city,zip,former_address_line,id_last4");

    private final Path folder;
    private final int voters;
    private final int envelopes;
    private final SplittableRandom random;
    private final Families families;
    private final Writing writing;
    private final TreeSet<String> streets = new TreeSet<>();
    private final TreeMap<String, Integer> received = new TreeMap<>();
    private int drawn;
    private int mailed;

    InventedElection(Path folder, @Nullable Path names, long seed, int voters, int envelopes) throws IOException {
        this.folder = Files.createDirectories(folder);
        this.voters = voters;
        this.envelopes = envelopes;
        random = new SplittableRandom(seed);
        NameTables tables = NameTables.of(names);
        families = new Families(random.split(), tables, new Town(random.split(), voters));
        writing = new Writing(families, random.split(), tables.nicknames());
    }

    private static List<String> columns(String names) {
        return List.of(names.split(","));
    }

    /** Writes every file of the folder. */
    void write() throws IOException {
        for (String file : List.of("contests.csv", "ballot-styles.csv")) {
            Files.copy(BALLOTS.resolve(file), folder.resolve(file), StandardCopyOption.REPLACE_EXISTING);
        }
        Files.writeString(
                folder.resolve("election.yaml"),
                Files.readString(BALLOTS.resolve("election.yaml"))
                        .replace("name: Tamarack County General Election", "name: An Invented State's Election")
                        .replace("receipts: check_digit\n", ""));
        List<String> mail = FileColumns.MAIL;
        List<String> checkIns = FileColumns.CHECK_INS;
        CsvOutput.write(
                folder.resolve("envelopes.csv"),
                FileColumns.ENVELOPES,
                sheets -> CsvOutput.write(
                        folder.resolve("mail-ballots.csv"),
                        mail,
                        sent -> CsvOutput.write(
                                folder.resolve("check-ins.csv"),
                                checkIns,
                                books -> CsvOutput.write(
                                        folder.resolve("roll.csv"), ROLL, roll -> fill(roll, sent, books, sheets)))));
        places();
        transmittals();
    }

    private void fill(CsvOutput roll, CsvOutput mail, CsvOutput books, CsvOutput sheets) {
        int made = 0;
        while (made < voters) {
            List<Person> household = families.household();
            for (Person person : household.subList(0, Math.min(household.size(), voters - made))) {
                roll.row(voter(person));
                boolean votesHere = random.nextInt(voters - made++) < envelopes - drawn;
                boolean byMail = random.nextDouble() < MAIL;
                if (byMail) {
                    mail(mail, person, votesHere);
                }
                if (votesHere) {
                    sheets.row(envelope(person, byMail));
                } else if (random.nextDouble() < CHECKED_IN) {
                    books.row(person.id(), location(person.home()), moment().toString(), "regular", "yes", "");
                }
            }
        }
    }

    private void mail(CsvOutput mail, Person person, boolean votesHere) {
        LocalDate issued = DAY.minusDays(10 + random.nextInt(35));
        String state =
                in(votesHere ? 8 : 68) ? "accepted" : in(85) ? "outstanding" : in(50) ? "surrendered" : "rejected";
        LocalDate on = state.equals("outstanding") ? issued : issued.plusDays(4 + random.nextInt(6));
        mail.row(person.id(), "M" + (2_000_000 + ++mailed), issued.toString(), state, on.toString());
    }

    private boolean in(double percent) {
        return random.nextDouble() * 100 < percent;
    }

    private LocalDateTime moment() {
        return DAY.atTime(7 + random.nextInt(13), random.nextInt(60));
    }

    private String[] voter(Person person) {
        Person.Home home = person.home();
        streets.add(home.street() + "|" + home.city() + "|" + home.zip());
        return new String[] {
            person.id(),
            person.last(),
            person.first(),
            person.middle(),
            person.suffix(),
            person.born().toString(),
            String.valueOf(home.house()),
            home.street(),
            home.unit(),
            home.city(),
            home.zip(),
            precinct(home),
            "2016-02-0" + (1 + random.nextInt(9)),
            in(11) ? "inactive" : "active",
            in(8) ? "" : person.last4(),
            "",
            "",
            "no",
            "yes",
            "full",
            in(4) ? "es" : "en"
        };
    }

    /** One envelope in eight is of somebody who is not on the roll. */
    private List<String> envelope(Person voter, boolean byMail) {
        boolean onRoll = random.nextDouble() < InventedFiles.ON_ROLL;
        Person person = onRoll ? voter : in(50) ? families.stranger() : families.childOf(voter);
        List<String> written = writing.envelope(person, onRoll).cells();
        Person.Home cast = in(85) ? voter.home() : families.home();
        streets.add(cast.street() + "|" + cast.city() + "|" + cast.zip());
        received.merge(location(cast), 1, Integer::sum);
        boolean shown = in(90);
        FileRow row = new FileRow(FileColumns.ENVELOPES)
                .set("envelope_no", "E" + (1_000_001 + drawn))
                .set("receipt_no", "R" + (5_000_001 + drawn))
                .set("source", "poll")
                .set("voting_location", location(cast))
                .set("precinct_cast", precinct(cast))
                .set("ballot_style_cast", style(cast))
                .set("cast_at", moment())
                .set("extended_hours", "no")
                .set("issue_reasons", !shown ? "no_id" : byMail ? "mail_ballot_issued" : reason(onRoll))
                .set("language", in(4) ? "es" : "en")
                .set("id_shown", shown ? "yes" : "no")
                .set("id_kind", shown ? "drivers_license" : "")
                .set("sent_here_by_official", "no")
                .set("statements_ticked", "citizen;resident;not_voted")
                .set("voter_signed", in(96) ? "yes" : "no")
                .set("official_signed", "yes")
                .set("envelope_condition", "sealed");
        for (int i = 0; i < WRITTEN.size(); i++) {
            row.set(WRITTEN.get(i), written.get(i));
        }
        drawn++;
        return row.values();
    }

    private static String reason(boolean onRoll) {
        return onRoll ? "name_mismatch" : "not_on_list";
    }

    private static int part(Person.Home home) {
        return part(home.street());
    }

    private static int part(String street) {
        return 1 + Math.floorMod(street.hashCode(), 4);
    }

    private static String precinct(Person.Home home) {
        return home.zip() + "-" + part(home);
    }

    private static String location(Person.Home home) {
        return location(home.zip(), part(home));
    }

    private static String location(String zip, int part) {
        return (part < 3 ? "North School " : "South School ") + zip;
    }

    private static String style(Person.Home home) {
        return style(home.zip(), part(home));
    }

    private static String style(String zip, int part) {
        return String.format("T%02d", 1 + (Integer.parseInt(zip) * 4 + part) % STYLES);
    }

    private void places() {
        TreeSet<String> zips = new TreeSet<>();
        CsvOutput.write(folder.resolve("streets.csv"), FileColumns.STREETS, out -> {
            for (String street : streets) {
                String[] at = street.split("\\|");
                zips.add(at[2]);
                out.row("1", "99999", "both", at[0], at[1], at[2], at[2] + "-" + part(at[0]), "");
            }
        });
        CsvOutput.write(folder.resolve("precincts.csv"), FileColumns.PRECINCTS, out -> {
            for (String zip : zips) {
                for (int part = 1; part <= 4; part++) {
                    out.row(zip + "-" + part, "", style(zip, part), "", location(zip, part));
                }
            }
        });
    }

    private void transmittals() {
        CsvOutput.write(folder.resolve("transmittals.csv"), FileColumns.TRANSMITTALS, out -> {
            int bag = 0;
            for (Map.Entry<String, Integer> place : received.entrySet()) {
                String seal = String.valueOf(100_000 + ++bag);
                String sent = place.getValue().toString();
                String supplied = String.valueOf(place.getValue() + 100);
                out.row(
                        place.getKey(),
                        DAY.toString(),
                        "B" + bag,
                        seal,
                        seal,
                        supplied,
                        sent,
                        "0",
                        "100",
                        sent,
                        "0",
                        "0");
            }
        });
    }
}
