package org.proviso.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import org.proviso.cli.option.MappingOption;
import org.proviso.cli.option.SetAsideOption;
import org.proviso.core.CountyRuling;
import org.proviso.core.Election;
import org.proviso.core.adjudication.WhatIf;
import org.proviso.core.adjudication.finding.DateWords;
import org.proviso.core.rules.DeadlineBook;
import org.proviso.core.rules.PackResolver;
import org.proviso.core.rules.ResolvedPack;
import org.proviso.files.election.ElectionFolder;
import org.proviso.files.mapping.MappedFolder;
import org.proviso.files.packs.RulePacks;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What other rules would change: the envelopes of an election under the rules in force and under others. */
@Command(
        name = "what-if",
        description = {
            "Compares an election folder's envelopes under its own rules and under another rule pack, or with single",
            "values changed: which envelopes come out differently, from what to what, and why. Nothing is written."
        },
        mixinStandardHelpOptions = true)
final class WhatIfCommand implements Callable<Integer> {

    @Parameters(paramLabel = "<election folder>", description = "The folder with election.yaml and the other files.")
    private Path folder;

    @Option(names = "--pack", paramLabel = "P", description = "Another rule pack: a bundled one, or a rule pack file.")
    private String pack = "";

    @Option(
            names = "--set",
            paramLabel = "RULE=VALUE",
            description = "A changed value, spelled as in a rule pack; may be given several times.")
    private Map<String, String> changed = new LinkedHashMap<>();

    @Option(
            names = "--as-of",
            paramLabel = "TIME",
            description = "Assess as of this county local time, as 2026-11-04T12:00"
                    + " (default: noon on the day after the election).")
    private LocalDateTime asOf;

    @Mixin
    private final SetAsideOption setAside = new SetAsideOption();

    @Mixin
    private MappingOption mapping = new MappingOption();

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        if (pack.isEmpty() && changed.isEmpty()) {
            throw new ParameterException(spec.commandLine(), "name another --pack, or a value with --set");
        }
        try (MappedFolder mapped = mapping.folder(folder)) {
            compare(mapped.read(
                    () -> setAside.read(mapped.folder(), spec.commandLine().getOut())));
        }
        return 0;
    }

    private void compare(ElectionFolder election) {
        LocalDateTime moment =
                asOf == null ? election.election().date().plusDays(1).atTime(12, 0) : asOf;
        AdjudicationRun before = AdjudicationRun.of(election, moment, 2);
        AdjudicationRun after = before.under(other(election.election()));
        List<WhatIf> differences = new ArrayList<>();
        for (int number = 0; number < before.cases().size(); number++) {
            WhatIf.between(before.cases().get(number), after.cases().get(number))
                    .ifPresent(differences::add);
        }
        print(before, after, differences);
    }

    /** The other rules: rulings of the county hold under them too; a value set goes before all. */
    private DeadlineBook other(Election election) {
        List<CountyRuling> rulings = new ArrayList<>(election.rulings());
        LocalDate day = election.date();
        changed.forEach(
                (rule, value) -> rulings.add(new CountyRuling(rule, value, WhatIf.SUPPOSED, day, WhatIf.SUPPOSED)));
        ResolvedPack resolved = PackResolver.resolve(
                RulePacks.load(pack.isEmpty() ? election.rulePack() : pack), day, RulePacks.rulings(rulings));
        return DeadlineBook.of(resolved, election.daysClosed());
    }

    private void print(AdjudicationRun before, AdjudicationRun after, List<WhatIf> differences) {
        PrintWriter out = spec.commandLine().getOut();
        out.println("As of " + DateWords.moment(before.asOf()) + ", over the presumed links: "
                + before.pack().pack().id() + " " + before.pack().hash().substring(0, 12) + " against "
                + after.pack().pack().id() + " " + after.pack().hash().substring(0, 12));
        out.println(differences.size() + " of " + before.cases().size() + " envelopes come out differently.");
        Map<String, Integer> counts = new TreeMap<>();
        differences.forEach(whatIf -> counts.merge(
                whatIf.outlookBefore().words() + " -> " + whatIf.outlookAfter().words(), 1, Integer::sum));
        counts.forEach((change, count) -> out.println("  " + count + "  outlook " + change));
        for (WhatIf whatIf : differences) {
            out.println(whatIf.envelopeNo() + "  now: " + whatIf.before().words() + " -> "
                    + whatIf.after().words()
                    + "; outlook: " + whatIf.outlookBefore().words() + " -> "
                    + whatIf.outlookAfter().words());
            whatIf.because().forEach(line -> out.println("    " + line));
        }
        out.println(after.pack().pack().caution());
    }
}
