package org.proviso.notices;

import java.time.LocalDateTime;
import org.jspecify.annotations.Nullable;

/**
 * How many notices are still to be sent, how many of those should have gone out before, and when the first of all was due
 * (the county's clock; null for none).
 */
public record DueCount(int all, int overdue, @Nullable LocalDateTime oldest) {}
