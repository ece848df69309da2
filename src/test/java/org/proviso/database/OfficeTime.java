package org.proviso.database;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;

/** The clock of a test's office: it stands still until a test sets it on. */
public final class OfficeTime extends Clock {

    private static final ZoneId COUNTY = ZoneId.of("America/Detroit");

    private volatile Instant now = TestOfficeServices.NOW;

    /** Sets the office's clock to a moment on the clock of the samples' county. */
    public static void set(TestOffice office, LocalDateTime county) {
        set(office, county.atZone(COUNTY).toInstant());
    }

    static void set(TestOffice office, Instant moment) {
        ((OfficeTime) office.the(Clock.class)).now = moment;
    }

    /** Back to election night. */
    static void reset(TestOffice office) {
        set(office, TestOfficeServices.NOW);
    }

    @Override
    public ZoneId getZone() {
        return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
        throw new UnsupportedOperationException("the office's clock tells moments");
    }

    @Override
    public Instant instant() {
        return now;
    }
}
