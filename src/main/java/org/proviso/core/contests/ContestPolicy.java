package org.proviso.core.contests;

import org.proviso.core.Code;

/** Which contests of a cast ballot count when not all of them may. */
public enum ContestPolicy implements Code {
    /** Those that also stand on a ballot the voter was entitled to. */
    SHARED_CONTESTS,
    /** Those for federal office. */
    FEDERAL_CONTESTS
}
