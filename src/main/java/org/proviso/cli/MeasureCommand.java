package org.proviso.cli;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.proviso.cli.option.MappingOption;
import org.proviso.cli.option.SetAsideOption;
import org.proviso.core.Envelope;
import org.proviso.core.adjudication.Adjudicator;
import org.proviso.core.adjudication.CaseReport;
import org.proviso.core.adjudication.finding.CaseFacts;
import org.proviso.core.adjudication.finding.Link;
import org.proviso.core.adjudication.judging.Assessment;
import org.proviso.core.adjudication.judging.ElectionClocks;
import org.proviso.core.adjudication.questions.QuestionContext;
import org.proviso.files.election.ElectionFolder;
import org.proviso.files.mapping.MappedFolder;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Measures how long assessing takes: finding the facts of each envelope and answering every question three ways. */
@Command(
        name = "measure",
        description = {
            "Assesses the envelopes of an election folder repeatedly and prints how long it took.",
            "First it finds the facts again each time and assesses the case three ways: as it stands, over the presumed link,",
            "and as its outlook. Then it assesses facts already found. Matching is not included. All processors are used."
        },
        mixinStandardHelpOptions = true)
final class MeasureCommand implements Callable<Integer> {

    @Parameters(paramLabel = "<election folder>", description = "The folder with election.yaml and the other files.")
    private Path folder;

    @Option(
            names = "--envelopes",
            paramLabel = "N",
            defaultValue = "100000",
            description = "How many assessments to run (${DEFAULT-VALUE}).")
    private int envelopes;

    @Mixin
    private final SetAsideOption setAside = new SetAsideOption();

    @Mixin
    private MappingOption mapping = new MappingOption();

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        try (MappedFolder mapped = mapping.folder(folder)) {
            measure(mapped.read(
                    () -> setAside.read(mapped.folder(), spec.commandLine().getOut())));
        }
        return 0;
    }

    private void measure(ElectionFolder election) {
        LocalDateTime moment = election.election().date().plusDays(1).atTime(12, 0);
        AdjudicationRun run = AdjudicationRun.of(election, moment, 2);
        List<Envelope> all = election.envelopes();
        List<Link> links = run.cases().stream().map(CaseReport::link).toList();
        Adjudicator adjudicator = new Adjudicator(run.records(), run.book(), moment);
        QuestionContext setting = new QuestionContext(run.pack(), new ElectionClocks(run.book(), moment, Map.of()));
        measure("cases assessed from their records, three ways each", number -> {
            int index = number % all.size();
            return adjudicator.report(all.get(index), links.get(index)).settled();
        });
        List<CaseFacts> facts =
                run.cases().stream().map(report -> report.presumed().facts()).toList();
        measure(
                "assessments of facts already found",
                number -> Assessment.assess(facts.get(number % facts.size()), setting));
    }

    private void measure(String what, IntFunction<Assessment> assess) {
        long start = System.nanoTime();
        long answers = IntStream.range(0, envelopes)
                .parallel()
                .mapToLong(number -> assess.apply(number).answered().size())
                .sum();
        double seconds = (System.nanoTime() - start) / 1e9;
        spec.commandLine()
                .getOut()
                .println(String.format(
                        Locale.US,
                        "%,d %s in %.2f s (%,.0f a second), %,d answers",
                        envelopes,
                        what,
                        seconds,
                        envelopes / seconds,
                        answers));
    }
}
