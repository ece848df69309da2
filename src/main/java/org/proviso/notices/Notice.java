package org.proviso.notices;

import java.time.Instant;
import java.time.LocalDateTime;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.rules.Ask;
import org.proviso.core.rules.Reason;
import org.proviso.review.Decision;
import org.springframework.dao.OptimisticLockingFailureException;

/**
 * Something a voter must be told: for an ask its reason, for an outcome the number of the decision (the others null).
 * {@code dueAt} and {@code sentAt} are on the county's clock; {@code sentAt} is the earliest attempt, the one that
 * decides. A notice that was never sent is withdrawn when it no longer has to be.
 */
public record Notice(
        EnvelopeKey key,
        int number,
        NoticeKind kind,
        @Nullable Ask ask,
        @Nullable Reason reason,
        @Nullable Integer decisionNo,
        LocalDateTime dueAt,
        boolean heldApart,
        @Nullable Instant withdrawnAt,
        @Nullable LocalDateTime sentAt,
        int version) {

    /** The notice, if it is as it was seen. */
    Notice at(int seen) {
        if (seen != version) {
            throw new OptimisticLockingFailureException("The notice was changed since you saw it.");
        }
        return this;
    }

    public boolean isWithdrawn() {
        return withdrawnAt != null;
    }

    /** Whether it was withdrawn at that moment or later. */
    boolean withdrawnSince(Instant moment) {
        return withdrawnAt != null && !withdrawnAt.isBefore(moment);
    }

    public boolean isSent() {
        return sentAt != null;
    }

    /** Still to be sent. */
    public boolean isOpen() {
        return !isWithdrawn() && !isSent();
    }

    /** What the voter is asked for; only for an ask. */
    Ask asked() {
        return Objects.requireNonNull(ask, "a notice of an ask says what it asks for");
    }

    /** Why the voter is asked; only for an ask. */
    Reason askedBecause() {
        return Objects.requireNonNull(reason, "a notice of an ask says why it asks");
    }

    /** The number of the decision it tells of; only for an outcome. */
    int decided() {
        return Objects.requireNonNull(decisionNo, "a notice of an outcome names its decision");
    }

    /** Whether it tells of that decision. */
    boolean isOf(Decision decision) {
        return decisionNo != null && decisionNo == decision.number();
    }

    boolean asksFor(Ask asked) {
        return ask == asked;
    }
}
