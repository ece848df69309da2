package org.proviso.journey;

import java.io.IOException;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.springframework.util.FileSystemUtils;

/**
 * Seconds from {@code java -jar} to the sign-in page, and until the sample election is loaded, in an empty folder each
 * time; and processor seconds, which a busy machine changes less. A command, never a test: build the jar, then run its
 * main from the project's folder with how often, and options of Java where wanted.
 */
public final class StartBench {

    private static final Duration LIMIT = Duration.ofMinutes(5);
    private static final HttpClient BROWSER = HttpClient.newHttpClient();

    private record Start(double page, double processor, double sample) {}

    private StartBench() {}

    public static void main(String[] arguments) throws Exception {
        int times = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 3;
        List<String> options = List.of(arguments).subList(Math.min(1, arguments.length), arguments.length);
        for (int i = 1; i <= times; i++) {
            Start start = measure(options);
            System.out.printf(
                    "start %d: page after %.1f s (%.1f s of processor), sample after %.1f s%n",
                    i, start.page(), start.processor(), start.sample());
        }
    }

    private static Start measure(List<String> options) throws IOException, InterruptedException {
        Path folder = Files.createTempDirectory("start");
        Path said = folder.resolve("said.txt");
        int port = freePort();
        List<String> command = new ArrayList<>(List.of("java"));
        command.addAll(options);
        command.addAll(List.of(
                "-jar",
                Path.of("target", "proviso.jar").toAbsolutePath().toString(),
                "--server.port=" + port,
                "--proviso.data=" + folder.resolve("data")));
        long begin = System.nanoTime();
        Process server = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .redirectOutput(said.toFile())
                .start();
        try {
            while (!answers(port)) {
                goOn(server, said, begin);
            }
            double page = seconds(begin);
            double processor =
                    server.info().totalCpuDuration().orElse(Duration.ZERO).toMillis() / 1000.0;
            while (!Files.readString(said).contains("is ready after")) {
                goOn(server, said, begin);
            }
            return new Start(page, processor, seconds(begin));
        } finally {
            server.destroy();
            server.waitFor();
            FileSystemUtils.deleteRecursively(folder);
        }
    }

    private static void goOn(Process server, Path said, long begin) throws IOException, InterruptedException {
        if (!server.isAlive() || seconds(begin) > LIMIT.toSeconds()) {
            throw new IllegalStateException("The server did not start:\n" + Files.readString(said));
        }
        Thread.sleep(100);
    }

    private static double seconds(long begin) {
        return (System.nanoTime() - begin) / 1e9;
    }

    private static boolean answers(int port) throws InterruptedException {
        HttpRequest page = HttpRequest.newBuilder(URI.create("http://localhost:" + port + "/sign-in"))
                .build();
        try {
            return BROWSER.send(page, HttpResponse.BodyHandlers.discarding()).statusCode() == 200;
        } catch (IOException notYet) {
            return false;
        }
    }

    private static int freePort() throws IOException {
        try (ServerSocket any = new ServerSocket(0)) {
            return any.getLocalPort();
        }
    }
}
