package org.proviso.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.proviso.core.ElectionId;
import org.proviso.core.chain.LedgerEntry;
import org.proviso.database.OnBothDatabases;
import org.proviso.database.TestOffice;

/** Many people act at once, on two chains. */
class LedgerUnderLoadTest {

    private static final int THREADS = 20;
    private static final int ACTS = 25;
    private static final LedgerChain CHAIN = LedgerChain.of(new ElectionId("busy"));

    @OnBothDatabases
    void twenty_at_once_lose_double_and_break_nothing(TestOffice office) throws Exception {
        LedgerService ledger = office.the(LedgerService.class);
        office.inTransaction(() -> {
            ledger.open(CHAIN);
            return CHAIN;
        });
        together(thread -> {
            for (int act = 0; act < ACTS; act++) {
                String subject = "E-" + thread + "-" + act;
                office.inTransaction(() -> {
                    ledger.record(CHAIN, Actor.SYSTEM, "envelope_taken", subject, Map.of("thread", thread));
                    return ledger.record(LedgerChain.OFFICE, Actor.SYSTEM, "counted", subject, Map.of());
                });
            }
        });
        for (LedgerChain chain : List.of(CHAIN, LedgerChain.OFFICE)) {
            assertThat(ledger.verify(chain).fault()).isEmpty();
            assertThat(ledger.verify(chain).entries()).isEqualTo(THREADS * ACTS);
            assertThat(ledger.read(chain, 0, THREADS * ACTS + 1))
                    .extracting(LedgerEntry::subject)
                    .doesNotHaveDuplicates()
                    .hasSize(THREADS * ACTS);
        }
    }

    private static void together(Work work) throws Exception {
        ExecutorService people = Executors.newFixedThreadPool(THREADS);
        CyclicBarrier start = new CyclicBarrier(THREADS);
        List<Future<?>> done = new ArrayList<>();
        for (int thread = 0; thread < THREADS; thread++) {
            int number = thread;
            done.add(people.submit(() -> {
                start.await();
                work.by(number);
                return number;
            }));
        }
        people.shutdown();
        for (Future<?> task : done) {
            task.get();
        }
    }

    private interface Work {
        void by(int thread);
    }
}
