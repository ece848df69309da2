package org.proviso.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;

/** A program of its own that holds an H2 file, as a running server does, until it is ended. */
public final class HeldDatabase {

    private HeldDatabase() {}

    /** Starts it and waits until the file is held. */
    static Process start(Path file) throws IOException {
        String classes = System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
        Process program = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        classes,
                        HeldDatabase.class.getName(),
                        file.toString())
                .start();
        BufferedReader said = program.inputReader();
        assertThat(said.readLine()).isEqualTo("held");
        return program;
    }

    public static void main(String[] arguments) throws SQLException, InterruptedException {
        try (Connection held = DriverManager.getConnection("jdbc:h2:file:" + arguments[0], "sa", "")) {
            System.out.println(held.isValid(0) ? "held" : "not held");
            Thread.sleep(600_000);
        }
    }
}
