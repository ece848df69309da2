package org.proviso.cli;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.proviso.core.calendar.DeadlineAnchor;
import org.proviso.core.rules.Basis;
import org.proviso.core.rules.DeadlineBook;
import org.proviso.core.rules.DeadlineList;
import org.proviso.core.rules.PackResolver;
import org.proviso.files.CalendarFile;
import org.proviso.files.csv.CsvOutput;
import org.proviso.files.packs.RulePacks;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The deadlines of an election under a rule pack, as CSV or as a calendar file on standard output. */
@Command(
        name = "deadlines",
        description =
                "Prints the deadlines of an election as CSV: what,method,deadline_date,deadline_time,rule,reference.",
        mixinStandardHelpOptions = true)
final class DeadlinesCommand implements Callable<Integer> {

    /** Whose rules: a pack by its name or file, or a state by its two letters. */
    static final class RuleSource {
        @Option(
                names = "--pack",
                required = true,
                paramLabel = "P",
                description = "A bundled rule pack, or a rule pack file.")
        private String pack = "";

        @Option(names = "--state", required = true, paramLabel = "S", description = "A state's two-letter code, as CA.")
        private String state = "";

        String name() {
            return pack.isEmpty() ? "us-" + state.toLowerCase(Locale.ROOT) : pack;
        }
    }

    @ArgGroup(multiplicity = "1")
    private RuleSource whose;

    @Option(
            names = {"--election-date", "--date"},
            required = true,
            paramLabel = "D",
            description = "The election date, as 2026-11-03.")
    private LocalDate electionDate;

    @Option(
            names = "--closed",
            paramLabel = "D",
            split = ",",
            description = "Days the office is closed, other than weekends and the rule pack's holidays.")
    private Set<LocalDate> daysClosed = new LinkedHashSet<>();

    @Option(
            names = "--meeting",
            paramLabel = "T",
            description = "When the board meets, as 2026-11-16T10:00, for deadlines counted from the meeting.")
    private @Nullable LocalDateTime meeting;

    @Option(names = "--ics", description = "Prints a calendar file (RFC 5545) instead of CSV.")
    private boolean calendar;

    @Option(
            names = "--zone",
            paramLabel = "Z",
            description =
                    "The county's time zone for the calendar file, as America/Denver. Without it, times are local.")
    private String zone = "";

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        DeadlineBook book = DeadlineBook.of(
                PackResolver.resolve(RulePacks.load(whose.name()), electionDate, List.of()), daysClosed);
        if (meeting != null) {
            book = book.with(DeadlineAnchor.BOARD_MEETING, meeting);
        }
        spec.commandLine().getOut().print(calendar ? CalendarFile.text(book, zone()) : csv(book));
        spec.commandLine().getOut().flush();
        return 0;
    }

    private @Nullable ZoneId zone() {
        try {
            return zone.isEmpty() ? null : ZoneId.of(zone);
        } catch (DateTimeException e) {
            throw new ParameterException(
                    spec.commandLine(), "--zone: \"" + zone + "\" is not a time zone (write it as America/Denver)");
        }
    }

    private static String csv(DeadlineBook book) {
        return CsvOutput.text(
                List.of("what", "method", "deadline_date", "deadline_time", "rule", "reference"),
                csv -> DeadlineList.of(book).forEach(line -> write(csv, line)));
    }

    private static void write(CsvOutput csv, DeadlineList.Line line) {
        String basis = line.given().basis() == Basis.MEMORY ? ", from memory" : "";
        csv.row(
                line.what(),
                line.method(),
                line.deadline().map(day -> day.day().toString()).orElse(""),
                line.hour(),
                line.given().isKnown()
                        ? line.given().value().spelled()
                        : "unknown: the office must sign a county ruling",
                line.given().reference().words() + basis);
    }
}
