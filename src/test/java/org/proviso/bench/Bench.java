package org.proviso.bench;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.proviso.Proviso;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Measures matching from files to links on an invented election, beside two yardsticks in the same run. */
@Command(
        name = "bench",
        description = "Invents a roll and envelopes, matches them cold, and prints speed, memory and quality.",
        mixinStandardHelpOptions = true)
final class Bench implements Callable<Integer> {

    @Option(names = "--voters", defaultValue = "1000000", description = "Voters on the roll.")
    private int voters;

    @Option(names = "--envelopes", defaultValue = "100000", description = "Envelopes.")
    private int envelopes;

    @Option(names = "--seed", defaultValue = "977", description = "Other seeds give other people.")
    private long seed;

    @Option(names = "--names", description = "A folder of name tables; without it, invented names.")
    private @Nullable Path names;

    @Option(names = "--linkage", description = "A folder with RLdata10000.csv and febrl-dataset1.csv and 2.")
    private @Nullable Path linkage;

    @Option(names = "--work", defaultValue = "target/bench", description = "Where the files go.")
    private Path work;

    @Option(names = "--memory", defaultValue = "1g", description = "The program's heap.")
    private String memory;

    @Option(
            names = "--java",
            defaultValue = "-XX:TieredStopAtLevel=1",
            description = "The program's other options for Java; the default suits a run of seconds.")
    private String java;

    @Option(names = "--runs", defaultValue = "3", description = "Timed runs of each.")
    private int runs;

    @Option(names = "--yardsticks", defaultValue = "duckdb,h2", split = ",", description = "duckdb, h2 or none.")
    private List<String> yardsticks;

    private PrintStream out = System.out;
    private double seconds;

    public static void main(String[] arguments) {
        System.exit(new CommandLine(new Bench()).execute(arguments));
    }

    @Override
    public Integer call() throws IOException, InterruptedException {
        out.printf(Locale.ROOT, "%d voters, %d envelopes, seed %d, %s%n", voters, envelopes, seed, load());
        new InventedFiles(work, names, seed, voters, envelopes).write();
        Truth truth = Truth.read(file("truth.csv"));
        out.printf(Locale.ROOT, "on the roll: %d%n", truth.onRoll());
        speed();
        if (yardsticks.contains("duckdb")) {
            duck(truth);
        }
        if (yardsticks.contains("h2")) {
            Run h2 = Run.of(
                    List.of("-Xmx4g"), H2Yardstick.class, file("roll.csv"), file("envelopes.csv"), file("h2.csv"));
            yardstick("H2, naive", h2, Links.read(file("h2.csv")).best(truth));
        }
        quality(truth);
        if (linkage != null) {
            new OpenData(linkage, work, out).run();
        }
        return 0;
    }

    private void speed() throws IOException, InterruptedException {
        seconds = Double.MAX_VALUE;
        for (int i = 0; i < runs; i++) {
            Run run = match("envelopes.csv", "links.csv", "--threads", "2");
            seconds = Math.min(seconds, run.seconds());
            say("match", run);
        }
        say("match without options", match(List.of("-Xmx" + memory), "envelopes.csv", "links.csv", "--threads", "2"));
        match("envelopes.csv", "links-1.csv", "--threads", "1");
        boolean same = Files.mismatch(file("links.csv"), file("links-1.csv")) < 0;
        out.println("links of 1 and 2 threads: " + (same ? "the same bytes" : "DIFFERENT"));
    }

    private void say(String what, Run run) throws IOException {
        out.printf(
                Locale.ROOT,
                "%s: %s; index %.2f s; %.0f envelopes a second; %s%n",
                what,
                run,
                run.said("voters in"),
                envelopes / run.seconds(),
                load());
    }

    private void duck(Truth truth) throws IOException, InterruptedException {
        Run training = Run.of(
                List.of(),
                DuckYardstick.class,
                "train",
                file("roll.csv"),
                file("envelopes.csv"),
                file("truth.csv"),
                file("weights.txt"));
        out.println("DuckDB, learning its weights from the truth, which its time leaves out: " + training);
        for (int i = 0; i < runs; i++) {
            Run duck = Run.of(
                    List.of(),
                    DuckYardstick.class,
                    "link",
                    file("roll.csv"),
                    file("envelopes.csv"),
                    file("duck.csv"),
                    file("weights.txt"));
            yardstick("DuckDB", duck, Links.read(file("duck.csv")).best(truth));
        }
    }

    private void yardstick(String name, Run run, Quality quality) throws IOException {
        out.printf(Locale.ROOT, "%s: %s; %.0f envelopes a second; %s%n", name, run, envelopes / run.seconds(), load());
        out.println("  at its best threshold: " + quality);
        out.printf(Locale.ROOT, "  the best run of match took 1/%.2f of its time%n", run.seconds() / seconds);
    }

    private void quality(Truth truth) throws IOException, InterruptedException {
        Links with = links("envelopes.csv", "links.csv", truth);
        Links without = links("envelopes-no-last4.csv", "links-no-last4.csv", truth);
        out.println(KindTable.of(with, without, truth));
        Calibration calibration = new Calibration(with, truth);
        out.println(calibration.table());
        Files.writeString(file("calibration.svg"), calibration.svg("Best candidates, " + envelopes + " envelopes"));
        String second = new Calibration(without, truth).svg("Best candidates, no last four");
        Files.writeString(file("calibration-no-last4.svg"), second);
    }

    private Links links(String from, String to, Truth truth) throws IOException, InterruptedException {
        match(from, to, "--candidates", file("candidates.csv"));
        Links links = Links.read(file(to));
        out.println(from + ", sure and likely: " + links.quality(truth, false));
        out.println(from + ", sure: " + links.quality(truth, true));
        out.println(from + ", links at 0.99 or more that are right: " + Calibration.from(0.99, links, truth));
        out.println(from + ", voter among the first five: " + Links.among(file("candidates.csv"), truth));
        return links;
    }

    private Run match(String from, String to, Object... more) throws IOException, InterruptedException {
        return match(List.of("-Xmx" + memory, java), from, to, more);
    }

    private Run match(List<String> options, String from, String to, Object... more)
            throws IOException, InterruptedException {
        Object[] arguments = new Object[7 + more.length];
        List<Object> first = List.of("match", "--roll", file("roll.csv"), "--envelopes", file(from), "--out", file(to));
        System.arraycopy(first.toArray(), 0, arguments, 0, 7);
        System.arraycopy(more, 0, arguments, 7, more.length);
        return Run.of(options, Proviso.class, arguments);
    }

    private Path file(String name) {
        return work.resolve(name);
    }

    private static String load() throws IOException {
        return "load " + Files.readString(Path.of("/proc/loadavg")).split(" ")[0];
    }
}
