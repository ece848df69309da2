package org.proviso.status;

import java.time.LocalDate;
import org.proviso.core.deciding.DeciderKind;

/** When an envelope is to be decided, and by whom: on the day of a session, or by the day that the rules name. */
public record PlannedDecision(DeciderKind decider, LocalDate day, boolean called) {}
