package org.proviso.notices;

import org.proviso.core.act.Refusal;

/** What became of logging: done, or not possible and nothing was written. */
public sealed interface NoticeLogResult {

    /** The notice as it is now. */
    record Done(Notice notice) implements NoticeLogResult {}

    record Refused(Refusal refusal) implements NoticeLogResult {}
}
