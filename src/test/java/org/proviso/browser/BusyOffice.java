package org.proviso.browser;

import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.proviso.access.Staff;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.review.CaseService;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.file.CaseFileService;
import org.proviso.review.queue.QueueFilter;
import org.proviso.review.queue.QueueService;
import org.proviso.ui.frame.OfficeElections;

/** People who read the queue and one case after the other in a running office, each without a pause, until it is closed. */
final class BusyOffice implements AutoCloseable {

    private static final int PAGE = 50;

    private final AtomicInteger read = new AtomicInteger();
    private volatile boolean closed;
    private final long since = System.nanoTime();

    private BusyOffice() {}

    static BusyOffice of(RunningOffice office, int people) {
        ElectionId election = office.the(OfficeElections.class).all().get(0).id();
        List<EnvelopeKey> keys = office.the(CaseService.class).all(election).stream()
                .map(EnvelopeCase::key)
                .toList();
        BusyOffice busy = new BusyOffice();
        for (int person = 0; person < people; person++) {
            int first = person * PAGE;
            Thread reading = new Thread(() -> busy.read(office, election, keys, first));
            reading.setDaemon(true);
            reading.start();
        }
        return busy;
    }

    private void read(RunningOffice office, ElectionId election, List<EnvelopeKey> keys, int first) {
        Staff.signIn("reviewer");
        for (int at = first; !closed; at++) {
            office.the(QueueService.class).page(QueueFilter.all(election), 0, PAGE);
            office.the(CaseFileService.class).open(keys.get(at % keys.size()));
            read.incrementAndGet();
        }
    }

    @Override
    public String toString() {
        return String.format(
                java.util.Locale.ROOT,
                "they read %.0f lists and cases a second",
                2 * read.get() / ((System.nanoTime() - since) / 1e9));
    }

    @Override
    public void close() {
        closed = true;
    }
}
