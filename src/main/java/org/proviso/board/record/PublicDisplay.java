package org.proviso.board.record;

import java.time.LocalDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.proviso.board.BodyKind;
import org.proviso.board.MotionKind;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.deciding.DecisionOutcome;

/**
 * What the public in the room sees of a session: numbers and reasons of envelopes, motions and how votes came out; {@code
 * next} are the groups of the agenda with what is still to be voted on and not on the floor. It has no name of a voter or a
 * member, and nothing that anybody wrote.
 */
public record PublicDisplay(
        BodyKind body,
        String election,
        String place,
        LocalDateTime calledFor,
        @Nullable LocalDateTime openedAt,
        @Nullable LocalDateTime closedAt,
        int present,
        int members,
        int quorum,
        List<Group> agenda,
        List<Group> next,
        List<MotionLine> motions) {

    /** Envelopes of one consent group, or one that stands alone, with what is proposed (null: to be opened again). */
    public record Group(@Nullable DecisionOutcome proposed, String reason, List<EnvelopeNumber> envelopes) {}

    /** A motion; the votes are told once the vote is closed, and are none before. */
    public record MotionLine(
            int number,
            MotionKind kind,
            List<EnvelopeNumber> envelopes,
            List<String> reasons,
            boolean put,
            boolean ended,
            int yes,
            int no,
            int aside,
            String result) {}

    public boolean hasQuorum() {
        return present >= quorum;
    }

    /** What is before the session now: motions that have not ended. */
    public List<MotionLine> onTheFloor() {
        return motions.stream().filter(motion -> !motion.ended()).toList();
    }

    /** How votes came out, the latest first. */
    public List<MotionLine> results() {
        return motions.stream()
                .filter(MotionLine::ended)
                .sorted((line, other) -> Integer.compare(other.number(), line.number()))
                .toList();
    }
}
