package org.proviso.notices;

/** How many notices are still to be sent, and how many of those should have gone out before. */
public record DueCount(int all, int overdue) {}
