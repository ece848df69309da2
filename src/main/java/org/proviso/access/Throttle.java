package org.proviso.access;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Slows down whoever tries too often: at most so many times within a span, counted for each key. It forgets when the
 * server stops, and keeps no more than a bounded number of keys. Thread-safe.
 */
public final class Throttle {

    private static final int MOST_KEYS = 50_000;

    private final Clock clock;
    private final int most;
    private final Duration span;
    private final Map<String, Deque<Instant>> times = new LinkedHashMap<>(16, 0.75f, true);

    public Throttle(Clock clock, int most, Duration span) {
        this.clock = clock;
        this.most = most;
        this.span = span;
    }

    /** Counts one try of that key. Where it is one too many it is not counted, and the moment from when it may try again is given. */
    public synchronized Optional<Instant> refuses(String key) {
        Instant now = clock.instant();
        Deque<Instant> tries = times.computeIfAbsent(key, any -> new ArrayDeque<>());
        forgetOld(tries, now);
        if (tries.size() >= most) {
            return Optional.of(tries.getFirst().plus(span));
        }
        tries.addLast(now);
        forgetLongestUnused();
        return Optional.empty();
    }

    /** Takes the latest try back, for one that turned out right. */
    public synchronized void takeBack(String key) {
        Deque<Instant> tries = times.getOrDefault(key, new ArrayDeque<>());
        tries.pollLast();
    }

    /** Counts anew from nothing. */
    public synchronized void forget(String key) {
        times.remove(key);
    }

    private void forgetOld(Deque<Instant> tries, Instant now) {
        while (!tries.isEmpty() && !tries.getFirst().plus(span).isAfter(now)) {
            tries.removeFirst();
        }
    }

    private void forgetLongestUnused() {
        if (times.size() > MOST_KEYS) {
            times.remove(times.keySet().iterator().next());
        }
    }
}
