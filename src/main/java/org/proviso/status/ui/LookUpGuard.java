package org.proviso.status.ui;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.OptionalLong;
import org.proviso.access.Throttle;
import org.proviso.core.ReceiptNumber;

/** Slows down guessing of receipt numbers or birth dates: limits look-ups per address and per receipt in fifteen minutes. */
final class LookUpGuard {

    private static final Duration SPAN = Duration.ofMinutes(15);

    private final Clock clock;
    private final Throttle addresses;
    private final Throttle receipts;

    LookUpGuard(Clock clock, int fromAnAddress, int forAReceipt) {
        this.clock = clock;
        addresses = new Throttle(clock, fromAnAddress, SPAN);
        receipts = new Throttle(clock, forAReceipt, SPAN);
    }

    /** Minutes until the next try, or empty if this look-up may go on (it is then counted). */
    OptionalLong minutesToWait(String address, ReceiptNumber receiptNo) {
        Optional<Instant> from = addresses.refuses(address).or(() -> receipts.refuses(receiptNo.compared()));
        return from.map(this::minutesUntil).map(OptionalLong::of).orElseGet(OptionalLong::empty);
    }

    private long minutesUntil(Instant from) {
        return Duration.between(clock.instant(), from).plusSeconds(59).toMinutes();
    }
}
