package org.proviso.core.matching;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.proviso.core.Address;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.PersonName;
import org.proviso.core.VoterId;
import org.proviso.core.matching.index.RollEntry;
import org.proviso.core.matching.index.RollIndex;
import org.proviso.core.matching.index.RollIndexBuilder;

/**
 * Published record-linkage files with known pairs: FEBRL data sets 1 and 2 (Australian National University) and RLdata
 * (R package RecordLinkage). They are not rolls, so the bars are those of a sanity check: one record of each person is
 * the roll, the others are looked up.
 */
class LinkageDataTest {

    /** FEBRL has house numbers, streets and a nine-digit number; its records differ in several fields at once. */
    @Test
    void most_febrl_duplicates_find_their_original_and_sure_ones_are_right() throws IOException {
        for (String file : List.of("febrl-dataset1.csv", "febrl-dataset2.csv")) {
            RollIndexBuilder builder = RollIndex.builder();
            List<MatchQuery> queries = new ArrayList<>();
            Map<String, String> truth = new HashMap<>();
            for (Map<String, String> row : ReferenceRows.of("data/linkage/" + file)) {
                String id = cell(row, "rec_id");
                String person = id.split("-")[1];
                if (id.endsWith("-org")) {
                    builder.add(febrlEntry(person, row));
                } else {
                    queries.add(febrlQuery(id, row));
                    truth.put(id, person);
                }
            }
            Tally tally = Tally.of(new Matcher(builder.build()).matchAll(queries, 2), truth);
            System.out.println("matching " + file + ": " + tally);
            assertThat(tally.f1()).as(file + ": " + tally).isGreaterThan(0.97);
            assertThat(tally.surePrecision()).as(file + ": " + tally).isGreaterThanOrEqualTo(0.999);
        }
    }

    /** RLdata has only names and a birth date, so little can be sure; what is must be right. */
    @Test
    void sure_rldata_links_are_right() throws IOException {
        Map<String, String> first = new HashMap<>();
        RollIndexBuilder builder = RollIndex.builder();
        List<MatchQuery> queries = new ArrayList<>();
        Map<String, String> truth = new HashMap<>();
        for (Map<String, String> row : ReferenceRows.of("data/linkage/RLdata10000.csv")) {
            PersonName name = new PersonName(
                    cell(row, "lname_c1") + " " + cell(row, "lname_c2"),
                    cell(row, "fname_c1"),
                    cell(row, "fname_c2"),
                    "");
            LocalDate born = date(cell(row, "by"), cell(row, "bm"), cell(row, "bd"));
            String id = cell(row, "row_id");
            String known = first.putIfAbsent(cell(row, "entity_id"), id);
            if (known == null) {
                builder.add(new RollEntry(new VoterId(id), name, "", born, "", "", "", "", "", ""));
            } else {
                queries.add(new MatchQuery(new EnvelopeNumber(id), name, "", born, Address.NONE, Address.NONE, "", ""));
                truth.put(id, known);
            }
        }
        Tally tally = Tally.of(new Matcher(builder.build()).matchAll(queries, 2), truth);
        System.out.println("matching RLdata10000: " + tally);
        assertThat(tally.surePrecision()).as(tally.toString()).isGreaterThanOrEqualTo(0.99);
    }

    private static RollEntry febrlEntry(String id, Map<String, String> row) {
        return new RollEntry(
                new VoterId(id),
                febrlName(row),
                "",
                febrlDate(row),
                cell(row, "street_number"),
                cell(row, "address_1"),
                "",
                "",
                last4(row),
                "");
    }

    private static MatchQuery febrlQuery(String id, Map<String, String> row) {
        String line = cell(row, "street_number") + " " + cell(row, "address_1");
        Address address = new Address(line, "", cell(row, "suburb"), "");
        return new MatchQuery(
                new EnvelopeNumber(id), febrlName(row), "", febrlDate(row), address, Address.NONE, last4(row), "");
    }

    private static PersonName febrlName(Map<String, String> row) {
        return new PersonName(cell(row, "surname"), cell(row, "given_name"), "", "");
    }

    private static @Nullable LocalDate febrlDate(Map<String, String> row) {
        String text = cell(row, "date_of_birth");
        return text.length() == 8 ? date(text.substring(0, 4), text.substring(4, 6), text.substring(6)) : null;
    }

    private static String last4(Map<String, String> row) {
        String number = cell(row, "soc_sec_id");
        return number.length() < 4 ? "" : number.substring(number.length() - 4);
    }

    private static @Nullable LocalDate date(String year, String month, String day) {
        try {
            return LocalDate.of(Integer.parseInt(year), Integer.parseInt(month), Integer.parseInt(day));
        } catch (DateTimeException | NumberFormatException e) {
            return null;
        }
    }

    private static String cell(Map<String, String> row, String column) {
        return row.getOrDefault(column, "").strip();
    }
}
