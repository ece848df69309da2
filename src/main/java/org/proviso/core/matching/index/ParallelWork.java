package org.proviso.core.matching.index;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/** Runs one piece of work on several threads at once and waits for all of them. */
public final class ParallelWork {

    private ParallelWork() {}

    public static void run(Runnable work, int threads) {
        if (threads == 1) {
            work.run();
            return;
        }
        ExecutorService pool = Executors.newFixedThreadPool(threads);
        try {
            List<Future<?>> futures = new ArrayList<>();
            for (int i = 0; i < threads; i++) {
                futures.add(pool.submit(work));
            }
            for (Future<?> future : futures) {
                future.get();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("The matching was interrupted.", e);
        } catch (ExecutionException e) {
            throw new IllegalStateException("The matching failed.", e.getCause());
        } finally {
            pool.shutdownNow();
        }
    }
}
