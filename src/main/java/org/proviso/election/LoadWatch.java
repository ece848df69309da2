package org.proviso.election;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import java.util.function.LongConsumer;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionSynchronization;
import org.springframework.transaction.support.TransactionSynchronizationManager;

/**
 * How far the load of files into the tables is, for pages and the console: a million rows take long enough to wonder. Of
 * two loads at once, what the last one said. Thread-safe.
 */
@Component
public class LoadWatch {

    private static final int EACH = 1_000;

    private final List<Consumer<LoadStep>> hearers = new CopyOnWriteArrayList<>();
    private volatile @Nullable LoadStep now;

    /** What is being loaded now. */
    public Optional<LoadStep> now() {
        return Optional.ofNullable(now);
    }

    /** Tells of every step from now on, on the thread that loads. */
    public void hear(Consumer<LoadStep> hearer) {
        hearers.add(hearer);
    }

    /** Does a load, whose steps are told until it ends, well or not; within a transaction, until that does. */
    public <T> T during(Supplier<T> load) {
        if (TransactionSynchronizationManager.isSynchronizationActive()) {
            TransactionSynchronizationManager.registerSynchronization(new TransactionSynchronization() {
                @Override
                public void afterCompletion(int status) {
                    now = null;
                }
            });
            return load.get();
        }
        try {
            return load.get();
        } finally {
            now = null;
        }
    }

    /** A step begins; rows of it are told by what is given back, once for each. */
    public LongConsumer begin(String words, long of) {
        tell(new LoadStep(words, 0, of));
        return rows -> {
            if (rows % EACH == 0 || rows == of) {
                tell(new LoadStep(words, rows, of));
            }
        };
    }

    private void tell(LoadStep step) {
        now = step;
        hearers.forEach(hearer -> hearer.accept(step));
    }
}
