package org.proviso.journey;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.database.TestOffice;
import org.proviso.journey.BusyReviewer.Done;
import org.proviso.review.CaseService;
import org.proviso.review.EnvelopeCase;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.dao.TransientDataAccessException;

/** Many reviewers at once, each in a thread of their own, and what became of their acts. */
public final class Crowd {

    /** Accepted acts in no particular order. */
    public final ConcurrentLinkedQueue<Done> accepted = new ConcurrentLinkedQueue<>();

    public final AtomicInteger refused = new AtomicInteger();
    public final AtomicInteger stale = new AtomicInteger();

    /** Acts that the database gave up, which the caller may try again: the victims of deadlocks. */
    public final ConcurrentLinkedQueue<TransientDataAccessException> givenUp = new ConcurrentLinkedQueue<>();

    private final Consumer<Done> told;

    /** {@code told} hears of every accepted act in the thread of whoever did it. */
    public Crowd(Consumer<Done> told) {
        this.told = told;
    }

    /** Lets so many act, each until told to stop; whatever else an act throws comes out here. */
    public void work(TestOffice office, int threads, long seed, BooleanSupplier goOn) throws Exception {
        List<EnvelopeKey> keys = office.the(CaseService.class).all(new ElectionId(Primary.ID)).stream()
                .map(EnvelopeCase::key)
                .toList();
        ExecutorService people = Executors.newFixedThreadPool(threads);
        CyclicBarrier start = new CyclicBarrier(threads);
        List<Future<?>> work = new ArrayList<>();
        for (int thread = 0; thread < threads; thread++) {
            BusyReviewer reviewer = new BusyReviewer(office, BusyReviewer.name(thread), seed + thread, keys);
            work.add(people.submit(() -> {
                start.await();
                while (goOn.getAsBoolean()) {
                    once(reviewer);
                }
                return reviewer;
            }));
        }
        people.shutdown();
        for (Future<?> task : work) {
            task.get();
        }
    }

    private void once(BusyReviewer reviewer) {
        try {
            reviewer.act().ifPresentOrElse(this::accept, refused::incrementAndGet);
        } catch (OptimisticLockingFailureException e) {
            stale.incrementAndGet();
        } catch (TransientDataAccessException e) {
            givenUp.add(e);
        }
    }

    private void accept(Done done) {
        accepted.add(done);
        told.accept(done);
    }

    @Override
    public String toString() {
        return accepted.size() + " accepted, " + refused + " refused, " + stale + " stale, " + givenUp.size()
                + " given up by the database";
    }
}
