package org.proviso.board.record;

import java.time.LocalDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.proviso.board.BodyKind;
import org.proviso.board.MotionKey;
import org.proviso.board.MotionKind;
import org.proviso.board.SessionKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.chain.ChainHead;
import org.proviso.core.deciding.Vote;

/**
 * The record of a session for its minutes: times on the county's clock (null for what has not happened), names as the
 * members bear them, and the head of the election's ledger when the record was drawn up. A decision took effect on the
 * vote recorded here, not on the adoption of the minutes.
 */
public record Minutes(
        SessionKey session,
        BodyKind body,
        String election,
        String place,
        LocalDateTime calledFor,
        @Nullable LocalDateTime openedAt,
        @Nullable LocalDateTime closedAt,
        int members,
        int quorum,
        List<Reopened> reopenings,
        List<Attendance> attendance,
        List<Keeper> keepers,
        List<RecusedMember> recusals,
        List<RemovedFromGroup> pulledOut,
        List<SentBack> sentBack,
        List<MotionEntry> motions,
        ChainHead ledger) {

    /** The session was closed by mistake and reopened; the reason is empty for a reader who may not see whole cases. */
    public record Reopened(LocalDateTime closedAt, LocalDateTime reopenedAt, String by, String because) {}

    /** A member who came, and left. */
    public record Attendance(
            String name, LocalDateTime arrivedAt, @Nullable LocalDateTime leftAt) {}

    /** A secretary who keeps the record, without a vote, and from when on. */
    public record Keeper(String name, LocalDateTime from) {}

    /** A member who stood aside; the ground is empty for a reader who may not see whole cases. */
    public record RecusedMember(String name, EnvelopeNumber envelopeNo, String ground, LocalDateTime at) {}

    /** An envelope that a member sent back to the reviewers; the note is empty for a reader who may not see whole cases. */
    public record SentBack(EnvelopeNumber envelopeNo, String by, LocalDateTime at, String note) {}

    /** An envelope taken out of its consent group, and by whom. */
    public record RemovedFromGroup(EnvelopeNumber envelopeNo, String by) {}

    /**
     * A motion with its votes. {@code because} is empty for a reader who may not see whole cases; {@code result} says in
     * words how it ended and what that came to, and is empty while it is before the session; {@code against} names the envelopes
     * that it counts against the rules' answer; {@code recordedBy} and {@code secondRecordedBy} are those who recorded what a
     * member said aloud (empty: the member did).
     */
    public record MotionEntry(
            MotionKey motion,
            MotionKind kind,
            List<EnvelopeNumber> envelopes,
            List<String> reasons,
            String legalReference,
            String because,
            List<String> against,
            String movedBy,
            String secondedBy,
            String recordedBy,
            String secondRecordedBy,
            List<VoteEntry> votes,
            String result,
            @Nullable LocalDateTime endedAt) {}

    /**
     * One member's vote. {@code recordedBy} is another member who recorded it, by name (empty: the member did), and {@code
     * confirmed} whether the member says that it is theirs (null while they said nothing).
     */
    public record VoteEntry(
            String name,
            Vote vote,
            String recordedBy,
            @Nullable Boolean confirmed) {}
}
