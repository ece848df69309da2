package org.proviso.cli;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/** One run of a verb in this process: its exit code and what it printed where. */
record Shell(int exit, String out, String err) {

    static synchronized Shell run(String... arguments) {
        PrintStream out = System.out;
        PrintStream err = System.err;
        ByteArrayOutputStream printed = new ByteArrayOutputStream();
        ByteArrayOutputStream failed = new ByteArrayOutputStream();
        try {
            System.setOut(new PrintStream(printed, true, StandardCharsets.UTF_8));
            System.setErr(new PrintStream(failed, true, StandardCharsets.UTF_8));
            int exit = CommandLineApp.run(arguments);
            return new Shell(exit, text(printed), text(failed));
        } finally {
            System.setOut(out);
            System.setErr(err);
        }
    }

    private static String text(ByteArrayOutputStream bytes) {
        return bytes.toString(StandardCharsets.UTF_8);
    }
}
