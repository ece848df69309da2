package org.proviso.review.queue;

/** A list of cases that one person named: its number, its name, and what narrows it as it stands in an address. */
public record SavedView(int viewNo, String viewName, String shown) {}
