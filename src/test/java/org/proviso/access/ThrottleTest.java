package org.proviso.access;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;

/** So many tries within a span for each key, and no more. */
class ThrottleTest {

    private static final Instant START = Instant.parse("2026-11-04T03:00:00Z");

    private final StoppedClock clock = new StoppedClock();
    private final Throttle throttle = new Throttle(clock, 3, Duration.ofMinutes(15));

    private static final class StoppedClock extends Clock {

        private Instant now = START;

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }

        @Override
        public Instant instant() {
            return now;
        }
    }

    private void threeTries() {
        for (int i = 0; i < 3; i++) {
            assertThat(throttle.refuses("ada")).isEmpty();
            clock.now = clock.now.plusSeconds(60);
        }
    }

    @Test
    void the_fourth_try_within_the_span_is_refused_until_the_first_is_old() {
        threeTries();
        assertThat(throttle.refuses("ada")).contains(START.plusSeconds(900));
        assertThat(throttle.refuses("ben")).isEmpty();
        clock.now = START.plusSeconds(899);
        assertThat(throttle.refuses("ada")).isPresent();
        clock.now = START.plusSeconds(900);
        assertThat(throttle.refuses("ada")).isEmpty();
        assertThat(throttle.refuses("ada")).isPresent();
    }

    @Test
    void a_refused_try_does_not_lengthen_the_wait() {
        threeTries();
        for (int i = 0; i < 100; i++) {
            throttle.refuses("ada");
        }
        clock.now = START.plusSeconds(900);
        assertThat(throttle.refuses("ada")).isEmpty();
    }

    @Test
    void a_try_that_was_right_is_taken_back_and_a_key_can_be_forgotten() {
        threeTries();
        throttle.takeBack("ada");
        throttle.takeBack("nobody");
        assertThat(throttle.refuses("ada")).isEmpty();
        assertThat(throttle.refuses("ada")).isPresent();
        throttle.forget("ada");
        assertThat(throttle.refuses("ada")).isEmpty();
    }

    @Test
    void tries_of_an_ipv6_network_count_together() {
        assertThat(ClientAddress.network("2001:db8:1:2:3:4:5:6")).isEqualTo("2001:db8:1:2");
        assertThat(ClientAddress.network("2001:db8:1:2:aaaa:bbbb:cccc:dddd")).isEqualTo("2001:db8:1:2");
        assertThat(ClientAddress.network("2001:db8::7:8:9:a")).isEqualTo("2001:db8");
        assertThat(ClientAddress.network("::1")).isEqualTo("::1");
        assertThat(ClientAddress.network("0:0:0:0:0:0:0:1")).isEqualTo("0:0:0:0");
        assertThat(ClientAddress.network("192.0.2.7")).isEqualTo("192.0.2.7");
    }
}
