package org.proviso.ledger.transaction;

import java.time.Duration;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.ReentrantLock;
import javax.sql.DataSource;
import org.springframework.dao.CannotAcquireLockException;
import org.springframework.jdbc.support.JdbcTransactionManager;
import org.springframework.transaction.TransactionDefinition;

/**
 * Transactions of which one at a time writes and commits, in the order in which they began; those that only read go on
 * beside it. H2 writes its tables to the file one after the other. Were somebody else in the middle of an act meanwhile, a
 * process killed then would leave half of that act (h2database, issue 2080, 2019). A transaction that waits too long fails
 * with {@link CannotAcquireLockException}: nothing is saved, and it may be tried again.
 */
final class OneWriterTransactions extends JdbcTransactionManager {

    private static final long serialVersionUID = 1L;

    private final transient ReentrantLock writing = new ReentrantLock(true);

    /** What this thread's open transactions hold, the innermost first: one that only reads holds nothing. */
    private final transient ThreadLocal<Deque<Boolean>> held = ThreadLocal.withInitial(ArrayDeque::new);

    private final Duration patience;

    /** @param patience how long a writer waits for the ones before it */
    OneWriterTransactions(DataSource connections, Duration patience) {
        super(connections);
        this.patience = patience;
    }

    /** Waits without a connection, so that those who wait take none from those who read. */
    @Override
    protected void doBegin(Object transaction, TransactionDefinition definition) {
        boolean writes = !definition.isReadOnly();
        if (writes) {
            waitForTheOthers();
        }
        try {
            super.doBegin(transaction, definition);
        } catch (RuntimeException | Error e) {
            if (writes) {
                writing.unlock();
            }
            throw e;
        }
        held.get().push(writes);
    }

    @Override
    protected void doCleanupAfterCompletion(Object transaction) {
        try {
            super.doCleanupAfterCompletion(transaction);
        } finally {
            boolean wrote = held.get().pop();
            if (held.get().isEmpty()) {
                held.remove();
            }
            if (wrote) {
                writing.unlock();
            }
        }
    }

    private void waitForTheOthers() {
        try {
            if (!writing.tryLock(patience.toMillis(), TimeUnit.MILLISECONDS)) {
                throw new CannotAcquireLockException(
                        "others were writing for " + patience.toSeconds() + " seconds; nothing was saved");
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new CannotAcquireLockException("stopped while waiting to write; nothing was saved", e);
        }
    }
}
