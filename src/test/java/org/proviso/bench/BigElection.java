package org.proviso.bench;

import java.io.IOException;
import java.nio.file.Path;

/**
 * Makes an invented election folder of any size: {@code BigElection FOLDER VOTERS ENVELOPES SEED [NAMES]}, from the
 * project's folder. A command, never a test.
 */
public final class BigElection {

    private BigElection() {}

    public static void main(String[] arguments) throws IOException {
        new InventedElection(
                        Path.of(arguments[0]),
                        arguments.length > 4 ? Path.of(arguments[4]) : null,
                        Long.parseLong(arguments[3]),
                        Integer.parseInt(arguments[1]),
                        Integer.parseInt(arguments[2]))
                .write();
    }
}
