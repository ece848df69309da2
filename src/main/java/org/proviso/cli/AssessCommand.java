package org.proviso.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import org.proviso.core.adjudication.finding.CaseFacts;
import org.proviso.core.adjudication.judging.Assessment;
import org.proviso.core.adjudication.judging.ElectionClocks;
import org.proviso.core.adjudication.questions.QuestionContext;
import org.proviso.core.rules.DeadlineBook;
import org.proviso.core.rules.PackResolver;
import org.proviso.files.packs.FactsYamlReader;
import org.proviso.files.packs.RulePacks;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Assesses facts written by hand, without any records: for counsel, for tests, and for trying a rule pack. */
@Command(
        name = "assess",
        description = "Assesses the facts of one case under a rule pack. Prints YAML with every answer and reference.",
        mixinStandardHelpOptions = true)
final class AssessCommand implements Callable<Integer> {

    @Option(names = "--pack", paramLabel = "P", description = "A bundled rule pack, or a rule pack file.")
    private String pack = "";

    @Option(names = "--election-date", paramLabel = "D", description = "The election date, as 2026-11-03.")
    private LocalDate electionDate;

    @Option(
            names = "--as-of",
            paramLabel = "T",
            description = "Assess as of this county local time, as 2026-11-04T12:00.")
    private LocalDateTime asOf;

    @Option(
            names = "--facts",
            paramLabel = "facts.yaml",
            description = "The file of facts. A fact left out is unknown.")
    private Path facts;

    @Option(
            names = "--closed",
            paramLabel = "D",
            split = ",",
            description = "Days the office is closed, other than weekends and the rule pack's holidays.")
    private Set<LocalDate> daysClosed = new LinkedHashSet<>();

    @Option(names = "--describe", description = "Prints every fact with its allowed values and meaning, then exits.")
    private boolean describe;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        spec.commandLine().getOut().print(describe ? FactVocabulary.describe() : assessed());
        spec.commandLine().getOut().flush();
        return 0;
    }

    private String assessed() {
        demandOptions();
        FactsYamlReader file = FactsYamlReader.open(facts);
        DeadlineBook book = DeadlineBook.of(
                PackResolver.resolve(RulePacks.load(pack), electionDate, RulePacks.rulings(file.rulings())),
                daysClosed);
        CaseFacts found = file.facts(book);
        QuestionContext setting = new QuestionContext(book.pack(), new ElectionClocks(book, asOf, file.noticesSent()));
        return AssessmentYaml.of(
                Assessment.assess(found, setting), Assessment.outlook(found, setting), book.pack(), asOf);
    }

    private void demandOptions() {
        List<String> missing = new ArrayList<>();
        if (pack.isEmpty()) {
            missing.add("--pack");
        }
        if (electionDate == null) {
            missing.add("--election-date");
        }
        if (asOf == null) {
            missing.add("--as-of");
        }
        if (facts == null) {
            missing.add("--facts");
        }
        if (!missing.isEmpty()) {
            throw new ParameterException(spec.commandLine(), "missing " + String.join(", ", missing));
        }
    }
}
