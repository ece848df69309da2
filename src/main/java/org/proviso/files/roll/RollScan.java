package org.proviso.files.roll;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;
import java.util.function.LongConsumer;
import org.proviso.core.matching.index.RollPortion;
import org.proviso.files.csv.CsvColumns;
import org.proviso.files.csv.CsvTable;
import org.proviso.files.csv.LongColumn;
import org.proviso.files.csv.UniqueHashes;

/**
 * Reads a roll for matching by several threads at once, each a stretch of the file, straight from its bytes. It takes plain
 * files only: at the first thing that is out of the ordinary (a row that is not whole, a bad date, a number that is there
 * twice, a line break within quotes, bytes that are not UTF-8) it gives up, and the caller reads the file with
 * {@link CsvTable}, which takes it or says what is wrong with it.
 */
public final class RollScan {

    private static final int LARGEST_STRETCH = 1 << 22;
    private static final int SMALLEST_STRETCH = 1 << 16;
    private static final int STRETCHES_PER_THREAD = 8;

    private final Path file;
    private final RollScanColumns columns;
    private final int threads;
    private final LongConsumer progress;
    private final long size;
    private final int stretch;
    private final AtomicInteger next = new AtomicInteger();
    private final AtomicLong rows = new AtomicLong();
    private final AtomicBoolean plain = new AtomicBoolean(true);

    private RollScan(Path file, RollScanColumns columns, int threads, LongConsumer progress) throws IOException {
        this.file = file;
        this.columns = columns;
        this.threads = threads;
        this.progress = progress;
        size = Files.size(file);
        long wished = size / threads / STRETCHES_PER_THREAD;
        stretch = (int) Math.max(SMALLEST_STRETCH, Math.min(LARGEST_STRETCH, wished));
    }

    /**
     * The portions of the threads, or nothing where the file is not plain. The header is judged as {@link CsvTable} does;
     * {@code progress} hears from time to time how many rows are read.
     */
    public static Optional<List<RollPortion>> read(
            Path file, CsvColumns columns, int threads, Consumer<String> warn, LongConsumer progress) {
        try {
            RollScanColumns header = RollScanColumns.of(file, columns, warn);
            return header == null ? Optional.empty() : new RollScan(file, header, threads, progress).read();
        } catch (IOException e) {
            // The careful reader meets it too and says so.
            return Optional.empty();
        }
    }

    private Optional<List<RollPortion>> read() throws IOException {
        List<ScannedPart> parts = new ArrayList<>();
        for (int i = 0; i < threads; i++) {
            parts.add(new ScannedPart());
        }
        run(parts);
        UniqueHashes ids = new UniqueHashes(parts.stream().map(part -> part.ids).toList());
        return plain.get() && ids.areUnique(threads)
                ? Optional.of(parts.stream().map(part -> part.portion).toList())
                : Optional.empty();
    }

    private void run(List<ScannedPart> parts) throws IOException {
        ExecutorService pool = Executors.newFixedThreadPool(threads);
        try {
            List<Future<?>> futures = new ArrayList<>();
            for (ScannedPart part : parts) {
                futures.add(pool.submit(() -> {
                    read(part);
                    return null;
                }));
            }
            for (Future<?> future : futures) {
                future.get();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException("Reading the roll was interrupted.", e);
        } catch (ExecutionException e) {
            throw new IOException(e.getCause());
        } finally {
            pool.shutdownNow();
        }
    }

    /** What one thread gathers. */
    private static final class ScannedPart {

        private final RollPortion portion = new RollPortion();
        private final LongColumn ids = new LongColumn();
    }

    private void read(ScannedPart part) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ)) {
            RollScanRows lines = new RollScanRows(columns, channel, size, stretch, part.portion, part.ids);
            int number = next.getAndIncrement();
            while (plain.get() && columns.end() + (long) number * stretch < size) {
                long start = columns.end() + (long) number * stretch;
                if (!lines.read(start, Math.min(size, start + stretch))) {
                    plain.set(false);
                }
                progress.accept(rows.addAndGet(part.portion.count()));
                number = next.getAndIncrement();
            }
        }
    }
}
