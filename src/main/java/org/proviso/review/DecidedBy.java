package org.proviso.review;

import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.proviso.core.UserName;
import org.proviso.core.deciding.DeciderKind;
import org.proviso.ledger.Actor;

/**
 * Who settled it: the kind of decider, the session and motion (null for a court), the user names of everyone who voted
 * yes or no, and who recorded it.
 */
public record DecidedBy(
        DeciderKind kind,
        @Nullable Integer sessionNo,
        @Nullable Integer motionNo,
        Set<UserName> voters,
        Actor recordedBy) {}
