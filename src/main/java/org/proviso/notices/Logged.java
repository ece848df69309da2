package org.proviso.notices;

import org.proviso.core.deciding.Refusal;

/** What became of logging: done, or not possible and nothing was written. */
public sealed interface Logged {

    /** The notice as it is now. */
    record Done(Notice notice) implements Logged {}

    record Refused(Refusal refusal) implements Logged {}
}
