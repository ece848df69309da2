package org.proviso.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.proviso.core.rules.DeadlineBook;
import org.proviso.core.rules.PackResolver;
import org.proviso.core.rules.RulePack;
import org.proviso.core.rules.Rules;
import org.proviso.files.packs.RulePacks;

/** Values for some elections only, and days counted from counted days. */
class PackDeadlinesTest {

    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource({"2024-11-05, 2024-10-21", "2025-11-04, 2025-10-20", "2024-03-05, 2024-02-24", "2019-03-05, "})
    void takes_the_value_that_is_for_this_kind_of_election(LocalDate electionDay, LocalDate lastDay) {
        RulePack pack = load(PackText.of("example")
                .inRule(
                        "registration.online",
                        "from: 2020-01-01",
                        "from: 2020-01-01\n      elections: other\n"
                                + "      value: {days: 10, before: election_day, time: end_of_day, if_closed: same_day}\n"
                                + "      reference: {title: Code, year: 2020}\n      basis: invented\n"
                                + "      checked: 2026-11-25\n    - from: 2020-01-01\n      elections: general"));
        assertThat(lastDayOnline(pack, electionDay)).isEqualTo(lastDay);
    }

    @Test
    void reads_a_day_counted_from_a_counted_day() {
        RulePack pack = load(PackText.of("example")
                .value(
                        "registration.online",
                        "{days: 1, before: {weekday: tuesday, nth: 4, before: election_day}, time: end_of_day,"
                                + " if_closed: next_open_day}"));
        // The Monday is a holiday that the example keeps not: it has no October holiday.
        assertThat(lastDayOnline(pack, LocalDate.of(2022, 11, 8))).isEqualTo("2022-10-10");
        assertThat(lastDayOnline(pack, LocalDate.of(2020, 11, 3))).isEqualTo("2020-10-05");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "'{date: 2024-10-14, after: election_day, time: end_of_day, if_closed: same_day}' | .after | has nothing to count from",
                "'{days: 1, after: election_day, time: that_hour, if_closed: same_day}' | .time | has no time of day to count from",
                "'{days: 1, before: {days: 4, before: election_day, time: noon}, time: end_of_day, if_closed: same_day}' | .before.time | is not a known key"
            })
    void refuses_forms_that_say_nothing(String value, String key, String reason) {
        PackText pack = PackText.of("example").value("decision.by", value);
        InputAssert.refused(
                () -> load(pack),
                "pack.yaml",
                pack.line("decision.by", "value:"),
                "rules.decision.by[1].value" + key,
                reason);
    }

    private RulePack load(PackText pack) {
        return RulePacks.load(pack.in(folder).toString());
    }

    private static LocalDate lastDayOnline(RulePack pack, LocalDate electionDay) {
        return DeadlineBook.of(PackResolver.resolve(pack, electionDay, List.of()), Set.of())
                .of(Rules.REGISTER_ONLINE)
                .map(deadline -> deadline.day())
                .orElse(null);
    }
}
