package org.proviso.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.proviso.cli.option.MappingOption;
import org.proviso.cli.option.SetAsideOption;
import org.proviso.core.matching.MatchQuery;
import org.proviso.core.matching.Matcher;
import org.proviso.core.matching.index.RollIndex;
import org.proviso.files.InputException;
import org.proviso.files.SetAside;
import org.proviso.files.mapping.MappedFolder;
import org.proviso.files.mapping.Mapping;
import org.proviso.files.mapping.MappingReader;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Finds the voter of each envelope on a roll and writes the pairings, each with its probability and verdict. */
@Command(
        name = "match",
        description = {
            "Finds each envelope's voter on the roll. Writes envelope_no,voter_id,probability,verdict:",
            "the best candidate even when it is not certain, and no voter_id when there is none. People confirm links."
        },
        mixinStandardHelpOptions = true)
final class MatchCommand implements Callable<Integer> {

    @Option(names = "--roll", required = true, paramLabel = "FILE", description = "The roll (CSV).")
    private Path roll;

    @Option(names = "--envelopes", required = true, paramLabel = "FILE", description = "The envelopes (CSV).")
    private Path envelopes;

    @Option(names = "--out", required = true, paramLabel = "FILE", description = "The output file of matches (CSV).")
    private Path out;

    @Option(
            names = "--candidates",
            paramLabel = "FILE",
            description = "Also writes up to five candidates for each envelope with their evidence (CSV).")
    private @Nullable Path candidates;

    @Option(
            names = "--threads",
            paramLabel = "N",
            description =
                    "Number of threads for matching; affects only the time it takes (default: one per processor).")
    private int threads = Runtime.getRuntime().availableProcessors();

    @Mixin
    private final SetAsideOption setAside = new SetAsideOption();

    @Mixin
    private MappingOption mapping = new MappingOption();

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        if (threads < 1) {
            throw new ParameterException(spec.commandLine(), "--threads must be 1 or more");
        }
        PrintWriter print = spec.commandLine().getOut();
        PrintWriter warnings = spec.commandLine().getErr();
        try (MappedFolder mapped = MappedFolder.ofSingleFiles()) {
            mapping.files().forEach(file -> convert(file, mapped));
            mapped.warnings().forEach(warning -> warnings.println("warning: " + warning));
            return mapped.read(() -> match(print, warnings));
        }
    }

    /** A mapping is for the roll or for the envelopes, whatever these files are named. */
    private void convert(Path file, MappedFolder mapped) {
        Mapping read = MappingReader.read(file);
        switch (read.list()) {
            case ROLL -> roll = mapped.convert(roll, read);
            case ENVELOPES -> envelopes = mapped.convert(envelopes, read);
            default ->
                throw new InputException(
                        file.getFileName().toString(), 0, "list", "is neither the roll nor the envelopes");
        }
    }

    private int match(PrintWriter print, PrintWriter warnings) {
        long start = System.nanoTime();
        List<String> ofEnvelopes = Collections.synchronizedList(new ArrayList<>());
        Supplier<List<MatchQuery>> reading = reading(ofEnvelopes::add);
        RollIndex index = setAside.reading(aside -> index(warnings, aside, reading), print);
        Matcher matcher = new Matcher(index);
        print.println("index: " + index.size() + " voters in " + secondsSince(start) + " s");
        print.flush();
        start = System.nanoTime();
        List<MatchQuery> queries = reading.get();
        ofEnvelopes.forEach(warning -> warnings.println("warning: " + warning));
        matcher = matcher.estimatedFrom(queries, threads);
        MatchFiles.write(out, matcher.pairAll(queries, threads));
        if (candidates != null) {
            MatchFiles.writeCandidates(candidates, matcher.matchAll(queries, threads));
        }
        print.println("match: " + queries.size() + " envelopes in " + secondsSince(start) + " s");
        print.flush();
        return 0;
    }

    /** The envelopes; with several threads they are read beside the roll, by one that would wait now and then. */
    private Supplier<List<MatchQuery>> reading(Consumer<String> warn) {
        if (threads == 1) {
            return () -> MatchFiles.queries(envelopes, warn);
        }
        CompletableFuture<List<MatchQuery>> read =
                CompletableFuture.supplyAsync(() -> MatchFiles.queries(envelopes, warn));
        return () -> {
            try {
                return read.join();
            } catch (CompletionException e) {
                throw e.getCause() instanceof RuntimeException cause ? cause : e;
            }
        };
    }

    /** Where the roll is bad, the envelopes are looked at too, so that both are mended at once. */
    private RollIndex index(PrintWriter warnings, @Nullable SetAside aside, Supplier<List<MatchQuery>> reading) {
        try {
            return MatchFiles.index(
                    roll,
                    threads,
                    warning -> warnings.println("warning: " + warning),
                    aside,
                    new LoadProgress(warnings));
        } catch (InputException wrong) {
            try {
                List<MatchQuery> unused = reading.get();
            } catch (InputException too) {
                throw wrong.and(too);
            }
            throw wrong;
        }
    }

    private static String secondsSince(long start) {
        return String.format(Locale.ROOT, "%.2f", (System.nanoTime() - start) / 1e9);
    }
}
