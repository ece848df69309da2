package org.proviso.core.calendar;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.proviso.Shared;

class HolidayTest {

    private static final Map<String, Holiday> BY_NAME = Map.ofEntries(
            Map.entry("New Year's Day", Holiday.NEW_YEARS_DAY),
            Map.entry("Birthday of Martin Luther King Jr.", Holiday.MARTIN_LUTHER_KING_DAY),
            Map.entry("Washington's Birthday", Holiday.WASHINGTONS_BIRTHDAY),
            Map.entry("Memorial Day", Holiday.MEMORIAL_DAY),
            Map.entry("Juneteenth National Independence Day", Holiday.JUNETEENTH),
            Map.entry("Independence Day", Holiday.INDEPENDENCE_DAY),
            Map.entry("Labor Day", Holiday.LABOR_DAY),
            Map.entry("Columbus Day", Holiday.COLUMBUS_DAY),
            Map.entry("Veterans Day", Holiday.VETERANS_DAY),
            Map.entry("Thanksgiving Day", Holiday.THANKSGIVING),
            Map.entry("Christmas Day", Holiday.CHRISTMAS));

    private record Row(int year, Holiday holiday, LocalDate date, LocalDate observed) {}

    /** The reference table of federal holidays 2016-2030 (5 USC 6103(a)), every row of it and no holiday besides. */
    @Test
    void agrees_with_the_table_of_federal_holidays() throws IOException {
        Map<String, Row> table = new LinkedHashMap<>();
        for (String line : lines("us-federal-holidays-2016-2030.csv")) {
            String[] cells =
                    line.replace("King, Jr.", "King Jr.").replace("\"", "").split(",");
            Holiday holiday = BY_NAME.get(cells[1]);
            assertThat(holiday).as(cells[1]).isNotNull();
            table.put(
                    cells[0] + " " + holiday,
                    new Row(Integer.parseInt(cells[0]), holiday, LocalDate.parse(cells[2]), LocalDate.parse(cells[4])));
        }
        Map<String, Row> ours = new LinkedHashMap<>();
        for (int year = 2016; year <= 2030; year++) {
            for (Holiday holiday : Steps.holidays("federal")) {
                if (holiday.keptIn(year)) {
                    ours.put(year + " " + holiday, new Row(year, holiday, holiday.date(year), holiday.observed(year)));
                }
            }
        }

        assertThat(table).hasSize(160);
        assertThat(ours).containsExactlyInAnyOrderEntriesOf(table);
    }

    /** The reference table of election days (2 USC 7: the Tuesday next after the first Monday in November). */
    @Test
    void agrees_with_the_table_of_general_election_days() throws IOException {
        List<String> days = lines("general-election-days-2016-2030.csv");

        assertThat(days).hasSize(15);
        assertThat(days).allSatisfy(line -> {
            String[] cells = line.split(",");
            assertThat(Holiday.GENERAL_ELECTION_DAY.date(Integer.parseInt(cells[0])))
                    .isEqualTo(cells[1]);
        });
    }

    @ParameterizedTest
    @CsvSource({"2021-12-31, false", "2022-01-01, false", "2022-01-03, true", "2023-01-02, false", "2027-06-18, false"})
    void keeps_a_weekend_holiday_on_the_friday_before_or_the_monday_after(LocalDate day, boolean open) {
        OfficeCalendar calendar = new OfficeCalendar(Steps.holidays("federal"), Set.of());
        assertThat(calendar.isOpen(day)).isEqualTo(open);
    }

    @Test
    void knows_no_juneteenth_before_it_was_made() {
        OfficeCalendar calendar = new OfficeCalendar(Steps.holidays("federal"), Set.of());
        assertThat(calendar.isOpen(LocalDate.of(2020, 6, 19))).isTrue();
        assertThat(calendar.isOpen(LocalDate.of(2025, 6, 19))).isFalse();
    }

    @Test
    void takes_the_day_after_thanksgiving_from_thanksgiving() {
        assertThat(Holiday.DAY_AFTER_THANKSGIVING.date(2026)).isEqualTo("2026-11-27");
    }

    private static List<String> lines(String name) throws IOException {
        try (Stream<String> lines = Files.lines(Shared.file("data/calendar/" + name))) {
            return lines.skip(1).toList();
        }
    }
}
