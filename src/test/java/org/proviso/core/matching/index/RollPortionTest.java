package org.proviso.core.matching.index;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.proviso.core.PersonName;
import org.proviso.core.VoterId;
import org.proviso.core.matching.spelling.RollLine;
import org.proviso.core.matching.spelling.RollLine.Cell;

/** A roll read from its bytes by several threads is the roll read as text, record for record. */
class RollPortionTest {

    @Property(tries = 200)
    void bytes_say_what_text_says(@ForAll("entries") List<RollEntry> entries) {
        RollIndexBuilder builder = RollIndex.builder();
        entries.forEach(builder::add);
        List<RollPortion> portions = List.of(new RollPortion(), new RollPortion(), new RollPortion());
        for (int i = entries.size() - 1; i >= 0; i--) {
            RollPortion portion = portions.get(i % 3);
            portion.begin(i);
            assertThat(portion.add(line(entries.get(i)))).isTrue();
        }
        assertThat(told(RollIndex.of(portions))).isEqualTo(told(builder.build()));
    }

    @Test
    void a_date_that_no_calendar_has_is_refused() {
        for (String date : List.of("1974-02-30", "1974-13-01", "1974-00-01", "1974-1-01", "03/09/1974", "1974-03-0x")) {
            RollPortion portion = new RollPortion();
            portion.begin(0);
            RollLine line = new RollLine();
            byte[] bytes = ("V1" + date).getBytes(StandardCharsets.UTF_8);
            line.in(bytes);
            line.put(Cell.VOTER_ID, 0, 2);
            line.put(Cell.DATE_OF_BIRTH, 2, bytes.length);
            assertThat(portion.add(line)).as(date).isFalse();
        }
    }

    /** All that an index holds of each voter, in words. */
    private static List<String> told(RollIndex index) {
        List<String> told = new ArrayList<>();
        RollWords words = index.words();
        RollColumns columns = index.columns();
        for (int voter = 0; voter < index.size(); voter++) {
            told.add(index.voterId(voter) + "|" + words.surnames().text(columns.surname(voter)) + "|"
                    + words.givens().text(columns.given(voter)) + "|"
                    + words.middles().text(columns.middle(voter)) + "|"
                    + words.surnames().text(columns.former(voter)) + "|" + columns.suffix(voter) + "|"
                    + Integer.toHexString(columns.birth(voter)) + "|" + columns.house(voter) + "|"
                    + words.streets().text(columns.street(voter)) + "|"
                    + words.doors().text(columns.door(voter)) + "|" + columns.zip(voter) + "|"
                    + columns.last4(voter) + "|" + columns.license(voter) + "|"
                    + words.surnames().count(columns.surname(voter)));
        }
        return told;
    }

    private static RollLine line(RollEntry entry) {
        StringBuilder text = new StringBuilder();
        RollLine line = new RollLine();
        String born = entry.birthDate() == null ? "" : entry.birthDate().toString();
        List<String> cells = List.of(
                entry.voterId().value(),
                entry.name().last(),
                entry.name().first(),
                entry.name().middle(),
                entry.name().suffix(),
                entry.formerName(),
                born,
                entry.houseNumber(),
                entry.street(),
                entry.unit(),
                entry.zip(),
                entry.idLast4(),
                entry.driversLicense());
        int place = 0;
        for (Cell cell : Cell.values()) {
            String written = cells.get(cell.ordinal());
            int length = written.getBytes(StandardCharsets.UTF_8).length;
            text.append(written);
            line.put(cell, place, place + length);
            place += length;
        }
        line.in(text.toString().getBytes(StandardCharsets.UTF_8));
        return line;
    }

    @Provide
    Arbitrary<List<RollEntry>> entries() {
        Arbitrary<String> names = Arbitraries.of(
                "",
                "Ruiz",
                "de la Cruz",
                "O'Brien",
                "Smith Jr",
                "Smith-Jones",
                "N\u00fa\u00f1ez",
                "Mary Ann",
                "J.",
                "Li",
                "VAN DYKE III");
        Arbitrary<PersonName> people = Combinators.combine(
                        names, names, names, Arbitraries.of("", "Jr", "III", "Sr.", "none"))
                .as(PersonName::new);
        Arbitrary<LocalDate> dates = Arbitraries.longs()
                .between(0, 40_000)
                .map(LocalDate.of(1899, 12, 25)::plusDays)
                .injectNull(0.1);
        Arbitrary<List<String>> homes = Combinators.combine(
                        Arbitraries.of("", "12", "12B", "12 1/2", "123456789", "7-A"),
                        Arbitraries.of("", "N Quarry St", "north quarry street", "Foster-Hill Rd", "County Road 12"),
                        Arbitraries.of("", "Apt 3", "#3", "3-B", "REAR"),
                        Arbitraries.of("", "49871", "49871-1234", "4987"))
                .as(List::of);
        Arbitrary<List<String>> numbers = Combinators.combine(
                        Arbitraries.of("", "1234", "0000", "12", "12a4"),
                        Arbitraries.of("", "D 123-456", "d123456"),
                        Arbitraries.of("", "Ruiz", "Ruiz, Ana"))
                .as(List::of);
        return Combinators.combine(Arbitraries.integers().between(1, 99_999), people, dates, homes, numbers)
                .as((id, name, born, home, number) -> new RollEntry(
                        new VoterId(String.format(Locale.ROOT, "V%05d", id)),
                        name,
                        number.get(2),
                        born,
                        home.get(0),
                        home.get(1),
                        home.get(2),
                        home.get(3),
                        number.get(0),
                        number.get(1)))
                .list()
                .ofMaxSize(20);
    }
}
