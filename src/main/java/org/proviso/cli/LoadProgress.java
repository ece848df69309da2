package org.proviso.cli;

import java.io.PrintWriter;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.LongConsumer;

/** Says on long loads how many rows have been read. Thread-safe. */
final class LoadProgress implements LongConsumer {

    private static final long STEP = 1_000_000;

    private final PrintWriter print;
    private final AtomicLong said = new AtomicLong();

    LoadProgress(PrintWriter print) {
        this.print = print;
    }

    @Override
    public void accept(long rows) {
        long steps = rows / STEP;
        long before = said.getAndAccumulate(steps, Math::max);
        if (steps > before) {
            print.println("read: " + steps + ",000,000 roll rows");
            print.flush();
        }
    }
}
