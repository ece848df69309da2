package org.proviso.release;

import org.proviso.core.act.Refusal;

/** What became of an act of the release team: done, or not now and nothing was written. */
public sealed interface ReleaseActResult {

    /** The batch as it is now. */
    record Done(Batch batch) implements ReleaseActResult {}

    record Refused(Refusal refusal) implements ReleaseActResult {}
}
