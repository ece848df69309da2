package org.proviso.board;

import java.time.Instant;
import org.proviso.core.UserName;

/** A closed session that was reopened: when it had been closed, and by whom, when (UTC) and why it was reopened. */
public record SessionReopening(Instant closedAt, String because, UserName reopenedBy, Instant reopenedAt) {}
