package org.proviso.cli;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import org.proviso.core.calendar.Deadline;
import org.proviso.core.rules.Ask;
import org.proviso.core.rules.Basis;
import org.proviso.core.rules.DeadlineBook;
import org.proviso.core.rules.Given;
import org.proviso.core.rules.PackResolver;
import org.proviso.core.rules.Rule;
import org.proviso.core.rules.RuleValue;
import org.proviso.core.rules.Rules;
import org.proviso.files.CsvOutput;
import org.proviso.files.RulePacks;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** The deadlines of an election under a rule pack, as CSV on standard output. */
@Command(
        name = "deadlines",
        description =
                "Prints the deadlines of an election as CSV: what,method,deadline_date,deadline_time,rule,reference.",
        mixinStandardHelpOptions = true)
final class DeadlinesCommand implements Callable<Integer> {

    @Option(names = "--pack", required = true, paramLabel = "P", description = "A bundled rule pack, or a pack file.")
    private String pack;

    @Option(names = "--election-date", required = true, paramLabel = "D", description = "As 2026-11-03.")
    private LocalDate electionDate;

    @Option(
            names = "--closed",
            paramLabel = "D",
            split = ",",
            description = "Days on which the office is closed besides weekends and the pack's holidays.")
    private Set<LocalDate> daysClosed = new LinkedHashSet<>();

    @Spec
    private CommandSpec spec;

    private record Line(String what, String method) {}

    @Override
    public Integer call() {
        DeadlineBook book =
                DeadlineBook.of(PackResolver.resolve(RulePacks.load(pack), electionDate, List.of()), daysClosed);
        String out = CsvOutput.text(
                List.of("what", "method", "deadline_date", "deadline_time", "rule", "reference"),
                csv -> lines(book)
                        .forEach((line, rule) -> write(csv, line, book.pack().of(rule), book.of(rule))));
        spec.commandLine().getOut().print(out);
        spec.commandLine().getOut().flush();
        return 0;
    }

    private static void write(CsvOutput csv, Line line, Given given, Optional<Deadline> deadline) {
        String basis = given.basis() == Basis.MEMORY ? ", from memory" : "";
        csv.row(
                line.what(),
                line.method(),
                deadline.map(day -> day.day().toString()).orElse(""),
                deadline.map(day -> day.rule().time().spelled()).orElse(""),
                given.isKnown() ? given.value().spelled() : "unknown: the office must sign a county ruling",
                given.reference().words() + basis);
    }

    private static Map<Line, Rule> lines(DeadlineBook book) {
        Map<Line, Rule> lines = new LinkedHashMap<>();
        lines.put(new Line("registration", "in_person"), Rules.REGISTER_IN_PERSON);
        lines.put(new Line("registration", "online"), Rules.REGISTER_ONLINE);
        lines.put(new Line("registration", "mail_postmark"), Rules.REGISTER_MAIL_POSTMARK);
        lines.put(new Line("registration", "mail_received"), Rules.REGISTER_MAIL_RECEIVED);
        lines.put(new Line("mail_receipt", ""), Rules.MAIL_RECEIPT);
        for (Ask ask : Ask.values()) {
            keepKnown(lines, book, new Line("notice", ask.code()), Rule.notice(ask));
            keepKnown(lines, book, new Line("cure", ask.code()), Rule.cure(ask));
        }
        lines.put(new Line("decision", ""), Rules.DECISION);
        lines.put(new Line("certification", ""), Rules.CERTIFICATION);
        return lines;
    }

    private static void keepKnown(Map<Line, Rule> lines, DeadlineBook book, Line line, Rule rule) {
        if (!(book.pack().of(rule).value() instanceof RuleValue.Unknown)) {
            lines.put(line, rule);
        }
    }
}
