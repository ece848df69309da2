package org.proviso.board;

import java.time.Instant;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.core.deciding.Motion;
import org.proviso.core.deciding.MotionResult;
import org.proviso.core.rules.Reason;
import org.springframework.dao.OptimisticLockingFailureException;

/**
 * A motion before a session: what was moved, with the contests named to count in part (empty: as recommended), on what
 * grounds ({@code because} says why it departs from the
 * recommendation, or why to table or to reopen), when it was put to the vote, how it ended in this body and what that
 * came to in words, and the other body's motion it was read with; who recorded the motion and the second, where a member
 * said it aloud. What has not happened is null.
 */
public record BoardMotion(
        MotionKey key,
        MotionKind kind,
        List<MotionEnvelope> envelopes,
        Set<String> contests,
        List<Reason> reasons,
        String legalReference,
        String because,
        UserName movedBy,
        @Nullable UserName secondedBy,
        @Nullable UserName recordedBy,
        @Nullable UserName secondRecordedBy,
        Instant movedAt,
        @Nullable Instant putAt,
        @Nullable MotionResult end,
        @Nullable Instant endedAt,
        @Nullable String words,
        @Nullable MotionKey joined,
        int version) {

    public BoardMotion at(int seen) {
        if (seen != version) {
            throw new OptimisticLockingFailureException(
                    "Motion " + key.motionNo() + ", or a vote on it, was changed since you saw it.");
        }
        return this;
    }

    /** For a reader who may not see what was written about a voter. */
    public BoardMotion withoutWords() {
        return new BoardMotion(
                key,
                kind,
                envelopes,
                contests,
                reasons,
                legalReference,
                "",
                movedBy,
                secondedBy,
                recordedBy,
                secondRecordedBy,
                movedAt,
                putAt,
                end,
                endedAt,
                words,
                joined,
                version);
    }

    /** The envelopes that the vote is about. */
    public List<MotionEnvelope> put() {
        return envelopes.stream()
                .filter(motionEnvelope -> !motionEnvelope.pulledOut())
                .toList();
    }

    /** Their numbers. */
    public List<EnvelopeNumber> putNos() {
        return put().stream().map(MotionEnvelope::envelopeNo).toList();
    }

    /** Those that it counts against the rules' answer. */
    public List<MotionEnvelope> against() {
        return put().stream()
                .filter(motionEnvelope -> motionEnvelope.against().isPresent())
                .toList();
    }

    /** As the rules read it, while it is still to be voted on. */
    public Motion asking(DecisionOutcome asks) {
        Set<EnvelopeNumber> pulledOut = envelopes.stream()
                .filter(MotionEnvelope::pulledOut)
                .map(MotionEnvelope::envelopeNo)
                .collect(Collectors.toSet());
        Set<EnvelopeNumber> all = new LinkedHashSet<>();
        envelopes.forEach(motionEnvelope -> all.add(motionEnvelope.envelopeNo()));
        return new Motion(asks, all, pulledOut, null);
    }

    public boolean touches(BoardMotion other) {
        return putNos().stream().anyMatch(other.putNos()::contains);
    }

    /** Whether the other body moved the same of the same envelopes, on the same reasons, as the cases were then. */
    public boolean isTheSameAs(BoardMotion other) {
        return kind == other.kind
                && put().size() == other.put().size()
                && put().stream().allMatch(one -> other.put().stream().anyMatch(one::isSeenAs))
                && contests.equals(other.contests)
                && Set.copyOf(reasons).equals(Set.copyOf(other.reasons));
    }
}
