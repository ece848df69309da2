package org.proviso.status.ui;

import java.io.EOFException;
import java.io.IOException;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.atomic.AtomicInteger;
import org.proviso.core.Envelope;
import org.proviso.files.election.ElectionFolder;

/**
 * How many look-ups a second a running server answers, and how long the slowest hundredth takes. A command, never a test:
 * start the server with the sample general election and {@code --proviso.look-up.from-an-address=1000000
 * --proviso.look-up.for-a-receipt=1000000}, then run this main with its address, the seconds and how many ask at once.
 */
public final class LookUpBench {

    /** The last chunk of an answer. */
    private static final String END = "\r\n0\r\n\r\n";

    /** How many requests the server takes on one connection, less one. */
    private static final int KEPT = 99;

    private LookUpBench() {}

    public static void main(String[] arguments) throws Exception {
        String server = arguments.length > 0 ? arguments[0] : "http://localhost:8080";
        int seconds = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 10;
        int atOnce = arguments.length > 2 ? Integer.parseInt(arguments[2]) : 16;
        List<String> forms = forms();
        measure(server, forms, seconds, atOnce);
        measure(server, forms, seconds, atOnce);
        System.exit(0);
    }

    private static List<String> forms() {
        return ElectionFolder.read(Path.of("sample-cases", "tamarack-general")).envelopes().stream()
                .filter(envelope -> envelope.affirmation().birthDate() != null)
                .map(LookUpBench::form)
                .toList();
    }

    private static String form(Envelope envelope) {
        var born = envelope.affirmation().birthDate();
        return "lang=en&receipt=" + envelope.receiptNo() + "&month=" + born.getMonthValue() + "&day="
                + born.getDayOfMonth() + "&year=" + born.getYear();
    }

    private static void measure(String server, List<String> forms, int seconds, int atOnce) throws Exception {
        ConcurrentLinkedQueue<Long> times = new ConcurrentLinkedQueue<>();
        AtomicInteger wrong = new AtomicInteger();
        long end = System.nanoTime() + seconds * 1_000_000_000L;
        Thread[] voters = new Thread[atOnce];
        for (int i = 0; i < atOnce; i++) {
            int first = i;
            voters[i] = new Thread(() -> ask(server, forms, first, end, times, wrong));
            voters[i].start();
        }
        for (Thread voter : voters) {
            voter.join();
        }
        long[] sorted = times.stream().mapToLong(Long::longValue).sorted().toArray();
        System.out.printf(
                "%d at once, %d s: %,d look-ups a second, median %.1f ms, p99 %.1f ms, %d not answered with the voter's own%n",
                atOnce,
                seconds,
                sorted.length / seconds,
                sorted[sorted.length / 2] / 1e6,
                sorted[(int) (sorted.length * 0.99)] / 1e6,
                wrong.get());
    }

    /** Over a plain socket that is kept, so that the measuring takes little of the machine that it measures. */
    private static void ask(
            String server,
            List<String> forms,
            int first,
            long end,
            ConcurrentLinkedQueue<Long> times,
            AtomicInteger wrong) {
        URI address = URI.create(server);
        int next = first;
        while (System.nanoTime() < end) {
            try (Socket line = new Socket(address.getHost(), address.getPort())) {
                line.setTcpNoDelay(true);
                for (int kept = 0; kept < KEPT && System.nanoTime() < end; kept++) {
                    long start = System.nanoTime();
                    if (!answer(line, address.getHost(), forms.get(next++ % forms.size()))) {
                        wrong.incrementAndGet();
                    }
                    times.add(System.nanoTime() - start);
                }
            } catch (IOException e) {
                wrong.incrementAndGet();
            }
        }
    }

    private static boolean answer(Socket line, String host, String form) throws IOException {
        String request =
                "POST /status HTTP/1.1\r\nHost: " + host + "\r\nContent-Type: application/x-www-form-urlencoded"
                        + "\r\nContent-Length: " + form.length() + "\r\n\r\n" + form;
        line.getOutputStream().write(request.getBytes(StandardCharsets.UTF_8));
        StringBuilder text = new StringBuilder();
        byte[] part = new byte[8192];
        while (text.indexOf(END, Math.max(0, text.length() - END.length())) < 0) {
            int read = line.getInputStream().read(part);
            if (read < 0) {
                throw new EOFException("the server hung up");
            }
            text.append(new String(part, 0, read, StandardCharsets.ISO_8859_1));
        }
        return text.indexOf("What has happened") > 0;
    }
}
