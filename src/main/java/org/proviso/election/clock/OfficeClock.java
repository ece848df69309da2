package org.proviso.election.clock;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;

/** The office's clock: the machine's, or in a demonstration one that runs ahead of it or behind. Thread-safe. */
final class OfficeClock extends Clock {

    private final Clock machine;
    private final boolean demo;
    private volatile Duration ahead = Duration.ZERO;

    OfficeClock(Clock machine, boolean demo) {
        this.machine = machine;
        this.demo = demo;
    }

    boolean isDemo() {
        return demo;
    }

    /** Whether this clock is one that a demonstration may move. */
    static boolean isOfDemo(Clock clock) {
        return clock instanceof OfficeClock own && own.isDemo();
    }

    /** Goes on as it was kept. */
    void follow(KeptClock kept) {
        ahead = kept.aheadOf(machine.instant());
    }

    /** How it is kept, so that it tells this moment now. */
    KeptClock telling(Instant now) {
        return new KeptClock(Duration.between(machine.instant(), now), now);
    }

    @Override
    public Instant instant() {
        return machine.instant().plus(ahead);
    }

    @Override
    public ZoneId getZone() {
        return machine.getZone();
    }

    @Override
    public Clock withZone(ZoneId zone) {
        throw new UnsupportedOperationException("the office's clock tells moments; ask an election for its zone");
    }
}
