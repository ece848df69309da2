package org.proviso.election.clock;

import java.time.Instant;

/** The clock of a demonstration was moved forward and tells this moment now; heard once that is kept. */
public record ClockMoved(Instant now) {}
