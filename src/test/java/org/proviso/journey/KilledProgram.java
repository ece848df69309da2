package org.proviso.journey;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** A {@link KilledOffice} in a program of its own, which can be stopped in the middle of whatever it does. */
final class KilledProgram {

    private final Process process;
    private final ByteArrayOutputStream said = new ByteArrayOutputStream();
    private final List<String> first = new ArrayList<>();

    private KilledProgram(Process process) {
        this.process = process;
    }

    /** Starts it and waits for its first act. */
    static KilledProgram start(String url, int round, int people) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xmx400m",
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
                        KilledOffice.class.getName(),
                        url,
                        String.valueOf(round),
                        String.valueOf(people))
                .redirectError(Path.of("target", "killed-program.txt").toFile())
                .start();
        KilledProgram program = new KilledProgram(process);
        while (program.first.isEmpty()) {
            Thread.sleep(5);
            List<String> acts = program.acts();
            program.first.addAll(acts);
            if (!process.isAlive()) {
                throw new IllegalStateException("it did not start: see target/killed-program.txt");
            }
        }
        Runtime.getRuntime().addShutdownHook(new Thread(process::destroyForcibly));
        return program;
    }

    /** Stops every thread of it where it is. */
    void stopForAMoment() throws IOException, InterruptedException {
        signal("STOP");
        Path stat = Path.of("/proc", String.valueOf(process.pid()), "stat");
        while (!Files.readString(stat).contains(") T ")) {
            Thread.onSpinWait();
        }
    }

    void goOn() throws IOException, InterruptedException {
        signal("CONT");
    }

    void kill() throws InterruptedException {
        process.toHandle().destroyForcibly();
        process.waitFor();
    }

    private void signal(String name) throws IOException, InterruptedException {
        new ProcessBuilder("kill", "-" + name, String.valueOf(process.pid()))
                .start()
                .waitFor();
    }

    /** The acts that it said are done, since last asked: "act envelope user version". */
    List<String> acts() throws IOException {
        InputStream out = process.getInputStream();
        while (out.available() > 0) {
            said.write(out.readNBytes(out.available()));
        }
        String text = said.toString(StandardCharsets.UTF_8);
        int end = text.lastIndexOf('\n') + 1;
        said.reset();
        said.writeBytes(text.substring(end).getBytes(StandardCharsets.UTF_8));
        List<String> acts = new ArrayList<>(first);
        first.clear();
        for (String line : text.substring(0, end).split("\n")) {
            if (line.startsWith("done ") && line.endsWith(KilledOffice.END)) {
                acts.add(line.substring("done ".length(), line.length() - KilledOffice.END.length()));
            }
        }
        return acts;
    }
}
