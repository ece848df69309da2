package org.proviso.election;

import org.proviso.core.CourtOrder;

/** A court's order on file, by its number in the election; the version goes with a later change of its standing. */
public record RecordedCourtOrder(int orderNo, int version, CourtOrder order) {}
