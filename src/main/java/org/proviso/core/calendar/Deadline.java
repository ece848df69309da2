package org.proviso.core.calendar;

import java.time.LocalDate;
import java.time.LocalDateTime;

/**
 * A deadline computed for one election: its day, the last moment that is still in time (local to the county), and the
 * day it was counted to before a closed day moved it.
 */
public record Deadline(LocalDate day, LocalDateTime lastMoment, LocalDate counted, DeadlineRule rule) {

    public boolean hasPassed(LocalDateTime moment) {
        return moment.isAfter(lastMoment);
    }

    public boolean wasMoved() {
        return !day.equals(counted);
    }
}
