package org.proviso.files;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.function.LongSupplier;
import org.proviso.files.csv.CsvOutput;
import org.proviso.files.csv.CsvRow;
import org.proviso.files.csv.CsvTable;
import org.proviso.files.roll.RollReader;

/**
 * Measures how fast a roll is read. After {@code mvn test-compile}:
 *
 * <pre>
 * java -Xmx1g -cp target/classes:target/test-classes:FASTCSV_JAR:JSPECIFY_JAR org.proviso.files.RollReadingBenchmark [rows]
 * </pre>
 *
 * It writes an invented roll to a temporary file, reads it in three ways, three times over (the first is the cold one),
 * and prints the time on the clock and the reading thread's processor time.
 */
public final class RollReadingBenchmark {

    private static final List<String> HEADER =
            Arrays.asList(RollReader.columns().required().toArray(String[]::new));

    private RollReadingBenchmark() {}

    public static void main(String[] arguments) throws IOException {
        int rows = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 1_000_000;
        Path file = Files.createTempFile("roll", ".csv");
        try {
            writeRoll(file, rows);
            System.out.printf("%,d rows, %,d bytes%n", rows, Files.size(file));
            for (int run = 1; run <= 3; run++) {
                measure("run " + run + " one voter after the other", () -> streamed(file));
                measure("run " + run + " rows alone, three cells each", () -> cells(file));
                measure(
                        "run " + run + " list of voters",
                        () -> RollReader.read(file, w -> {}).size());
            }
        } finally {
            Files.delete(file);
        }
    }

    private static long streamed(Path file) {
        long[] count = {0};
        RollReader.read(file, w -> {}, voter -> count[0]++);
        return count[0];
    }

    private static long cells(Path file) {
        long count = 0;
        try (CsvTable table = CsvTable.open(file, RollReader.columns(), w -> {})) {
            int last = table.column("last_name");
            int first = table.column("first_name");
            int born = table.column("date_of_birth");
            while (table.next()) {
                CsvRow row = table.row();
                count += row.date(born) != null && !row.text(last).equals(row.text(first)) ? 1 : 0;
            }
        }
        return count;
    }

    private static void measure(String what, LongSupplier work) {
        ThreadMXBean thread = ManagementFactory.getThreadMXBean();
        long start = System.nanoTime();
        long startCpu = thread.getCurrentThreadCpuTime();
        long count = work.getAsLong();
        Duration took = Duration.ofNanos(System.nanoTime() - start);
        Duration cpu = Duration.ofNanos(thread.getCurrentThreadCpuTime() - startCpu);
        System.out.printf("%-40s %,12d rows %6d ms (processor %d ms)%n", what, count, took.toMillis(), cpu.toMillis());
    }

    private static void writeRoll(Path file, int rows) {
        Random random = new Random(7);
        CsvOutput.write(file, HEADER, out -> {
            for (int i = 0; i < rows; i++) {
                out.row(voter(i, random));
            }
        });
    }

    private static List<String> voter(int number, Random random) {
        return List.of(
                String.format("VR%08d", number),
                word(random, 8_000),
                word(random, 900),
                word(random, 500),
                random.nextInt(40) == 0 ? "Jr" : "",
                String.format(
                        "%d-%02d-%02d", 1930 + random.nextInt(78), 1 + random.nextInt(12), 1 + random.nextInt(28)),
                String.valueOf(1 + random.nextInt(9_999)),
                word(random, 3_000) + " Avenue",
                random.nextInt(4) == 0 ? "Apt " + random.nextInt(40) : "",
                word(random, 40),
                String.valueOf(49_800 + random.nextInt(90)),
                String.format("P-%03d", random.nextInt(300)),
                String.format(
                        "%d-%02d-%02d", 1980 + random.nextInt(46), 1 + random.nextInt(12), 1 + random.nextInt(28)),
                random.nextInt(10) == 0 ? "inactive" : "active",
                String.format("%04d", random.nextInt(10_000)),
                String.format("D%09d", random.nextInt(1_000_000_000)),
                List.of("", "A", "B").get(random.nextInt(3)),
                random.nextInt(20) == 0 ? "yes" : "no");
    }

    /** An invented word of a stock of that size. */
    private static String word(Random random, int stock) {
        int seed = random.nextInt(stock);
        StringBuilder word = new StringBuilder().append((char) ('A' + seed % 26));
        for (int rest = seed + 700; rest > 0; rest /= 20) {
            word.append("aeiou".charAt(rest % 5)).append("lmnrstdkv".charAt(rest % 9));
        }
        return word.toString();
    }
}
