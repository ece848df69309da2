package org.proviso.election;

import java.util.List;
import org.proviso.core.CourtOrder;
import org.proviso.core.UserName;

/**
 * A court's order on file, by its number in the election; the version goes with a later change of its standing. Whoever
 * recorded it does not apply it to a case; an order from the election's files has nobody.
 */
public record RecordedCourtOrder(int orderNo, int version, CourtOrder order, List<UserName> recordedBy) {}
