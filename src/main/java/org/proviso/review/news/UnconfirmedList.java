package org.proviso.review.news;

import java.time.Instant;

/** A newer list that changes decided cases and waits for a second person: who brought it, and when. */
public record UnconfirmedList(int snapshotNo, String broughtBy, Instant broughtAt) {}
