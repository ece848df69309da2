package org.proviso.status;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class ExpiringCacheTest {

    private Instant now = Instant.parse("2026-11-04T14:00:00Z");
    private final AtomicInteger reads = new AtomicInteger();
    private final ExpiringCache<Integer> remembered = new ExpiringCache<>(new Clock() {
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
    });

    private int get(String key) {
        return remembered.get(key, reads::incrementAndGet);
    }

    @Test
    void it_is_read_once_for_each_key_until_it_is_forgotten() {
        assertThat(get("a")).isEqualTo(1);
        assertThat(get("a")).isEqualTo(1);
        assertThat(get("b")).isEqualTo(2);
        remembered.forget();
        assertThat(get("a")).isEqualTo(3);
    }

    @Test
    void after_a_minute_it_is_read_again_for_what_another_node_did() {
        get("a");
        now = now.plus(Duration.ofSeconds(60));
        assertThat(get("a")).isEqualTo(1);
        now = now.plus(Duration.ofSeconds(1));
        assertThat(get("a")).isEqualTo(2);
    }

    @Test
    void what_was_read_while_it_was_forgotten_is_not_kept() {
        remembered.get("a", () -> {
            remembered.forget();
            return reads.incrementAndGet();
        });
        assertThat(get("a")).isEqualTo(2);
    }
}
