package org.proviso.cli;

import java.io.PrintWriter;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.proviso.core.adjudication.proof.PackProof;
import org.proviso.core.adjudication.proof.ProofReport;
import org.proviso.core.rules.Rule;
import org.proviso.core.rules.RulePack;
import org.proviso.files.packs.RulePacks;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Proves rule packs: that no combination of facts breaks a promise. Exit code 1 when one does. */
@Command(
        name = "check-rules",
        description =
                "Proves a rule pack over every combination of facts. Prints the smallest counterexample if the proof fails.",
        mixinStandardHelpOptions = true)
final class CheckRulesCommand implements Callable<Integer> {

    @Parameters(
            index = "0",
            arity = "0..1",
            paramLabel = "<pack|file>",
            description = "A bundled rule pack, or a rule pack file.")
    private String pack = "";

    @Option(names = "--all", description = "Check every bundled rule pack.")
    private boolean all;

    @Option(names = "--vocabulary", description = "Prints every rule a rule pack can set, then exits.")
    private boolean vocabulary;

    @Option(
            names = "--election-date",
            paramLabel = "DATE",
            defaultValue = "2026-11-03",
            description =
                    "The election date to prove the rule pack for, in addition to every date on which it changes (${DEFAULT-VALUE}).")
    private LocalDate electionDate;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        if (vocabulary) {
            Rule.all().forEach(this::describe);
            return 0;
        }
        if (all != pack.isEmpty()) {
            throw new ParameterException(spec.commandLine(), "name one rule pack, or use --all");
        }
        long start = System.nanoTime();
        List<String> names = all ? RulePacks.bundled() : List.of(pack);
        List<Proved> proved = names.parallelStream().map(this::prove).toList();
        PrintWriter out = spec.commandLine().getOut();
        proved.forEach(provedPack -> print(provedPack, out));
        long broken = proved.stream()
                .filter(provedPack -> !provedPack.report().holds())
                .count();
        if (all) {
            out.println(String.format(
                    Locale.US,
                    "%d rule packs checked in %.1f s, %d refused",
                    proved.size(),
                    (System.nanoTime() - start) / 1e9,
                    broken));
        }
        return broken == 0 ? 0 : 1;
    }

    /** A pack with what the proof says of it. */
    private record Proved(RulePack pack, ProofReport report) {}

    private Proved prove(String name) {
        RulePack loaded = RulePacks.load(name);
        return new Proved(loaded, PackProof.proveForElection(loaded, electionDate));
    }

    private void describe(Rule rule) {
        String words = rule.words().isEmpty() ? "" : " (" + String.join(", ", rule.words()) + ")";
        spec.commandLine()
                .getOut()
                .println(rule.key() + ": " + rule.type().name().toLowerCase(Locale.ROOT) + words + ", "
                        + rule.use().name().toLowerCase(Locale.ROOT) + "; " + rule.meaning());
    }

    private void print(Proved proved, PrintWriter out) {
        RulePack pack = proved.pack();
        ProofReport report = proved.report();
        out.println(pack.id() + ": " + pack.name() + (pack.illustrative() ? ", illustrative" : ""));
        out.println("  " + report.tuples() + " fact tuples, " + report.classes() + " kinds of answer, "
                + report.combinations() + " combinations; pack as of " + electionDate + " "
                + report.hash().substring(0, 12));
        report.violations().forEach(violation -> {
            out.println("  BROKEN: " + violation.promise());
            out.println("    " + violation.counterexample());
        });
        report.warnings().forEach(warning -> out.println("  warning: " + warning));
        List<String> remembered = keys(report, true);
        if (!remembered.isEmpty()) {
            out.println("  from memory, so the office must sign a county ruling before a ballot is rejected on it: "
                    + String.join(", ", remembered));
        }
        if (!keys(report, false).isEmpty()) {
            out.println("  not in the rule pack, so these questions stay open: "
                    + keys(report, false).size() + " rules");
        }
        out.println(report.holds() ? "  holds" : "  REFUSED");
    }

    private static List<String> keys(ProofReport report, boolean known) {
        return report.needRuling().stream()
                .filter(given -> given.isKnown() == known)
                .map(given -> given.rule().key())
                .toList();
    }
}
