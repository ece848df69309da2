package org.proviso.status;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Supplier;

/**
 * Keeps what was read until it is forgotten, and for a minute at most, because another node forgets nothing here. What
 * was read while it was being forgotten is not kept. Thread-safe.
 */
final class ExpiringCache<T> {

    private static final Duration AT_MOST = Duration.ofMinutes(1);

    private record CachedValue<T>(T what, long readIn, Instant at) {}

    private final Clock clock;
    private final AtomicLong times = new AtomicLong();
    private final Map<String, CachedValue<T>> kept = new ConcurrentHashMap<>();

    ExpiringCache(Clock clock) {
        this.clock = clock;
    }

    T get(String key, Supplier<T> read) {
        Instant now = clock.instant();
        CachedValue<T> before = kept.get(key);
        if (before != null
                && before.readIn() == times.get()
                && !now.isAfter(before.at().plus(AT_MOST))) {
            return before.what();
        }
        long readIn = times.get();
        T what = read.get();
        kept.put(key, new CachedValue<>(what, readIn, now));
        return what;
    }

    void forget() {
        times.incrementAndGet();
    }
}
