package org.proviso.roll;

import org.proviso.core.Code;

/** Which list a snapshot is of. */
public enum SnapshotKind implements Code {
    ROLL,
    MAIL_BALLOTS,
    CHECK_INS,
    VOTED_ELSEWHERE
}
