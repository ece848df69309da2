package org.proviso.bench;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * One run of a program in a Java machine of its own, from its start to its end: cold, as an office runs it.
 *
 * @param seconds by the clock
 * @param processor seconds of processor time, which say more than the clock on a busy machine
 * @param peak the most memory it held, in MiB
 */
record Run(double seconds, double processor, long peak, String output) {

    /** The options of the Java machine, the class, its arguments. */
    static Run of(List<String> options, Class<?> main, Object... arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(
                List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString()));
        command.addAll(options);
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), main.getName()));
        for (Object argument : arguments) {
            command.add(argument.toString());
        }
        File output = File.createTempFile("bench", ".txt");
        long start = System.nanoTime();
        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(output)
                .start();
        Watch watch = new Watch(process.pid());
        while (process.isAlive()) {
            watch.look();
            Thread.sleep(5);
        }
        double seconds = (System.nanoTime() - start) / 1e9;
        String text = Files.readString(output.toPath());
        Files.delete(output.toPath());
        if (process.exitValue() != 0) {
            throw new IOException("A run ended with " + process.exitValue() + ": " + text);
        }
        return new Run(seconds, watch.processor, watch.peak / 1024, text);
    }

    /** The number after a word of the output. */
    double said(String word) {
        String rest = output.substring(output.indexOf(word) + word.length()).strip();
        return Double.parseDouble(rest.split("\\s+")[0]);
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT, "%.2f s by the clock, %.2f s of processor time, at most %d MiB", seconds, processor, peak);
    }

    /** Looks at a process's files under /proc while it lives. */
    private static final class Watch {

        private static final int TICKS = 100;
        private static final int USER_TICKS = 11;

        private final Path folder;
        private double processor;
        private long peak;

        Watch(long pid) {
            folder = Path.of("/proc", String.valueOf(pid));
        }

        void look() {
            try {
                String[] stat = Files.readString(folder.resolve("stat"))
                        .replaceFirst(".*\\) ", "")
                        .split(" ");
                processor = (Long.parseLong(stat[USER_TICKS]) + Long.parseLong(stat[USER_TICKS + 1])) / (double) TICKS;
                for (String line : Files.readAllLines(folder.resolve("status"))) {
                    peak = line.startsWith("VmHWM:") ? Long.parseLong(line.replaceAll("\\D", "")) : peak;
                }
            } catch (IOException e) {
                // It has just ended; what was seen last stands.
            }
        }
    }
}
