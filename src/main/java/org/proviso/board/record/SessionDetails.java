package org.proviso.board.record;

import java.time.LocalDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.proviso.board.AgendaItem;
import org.proviso.board.BoardMotion;
import org.proviso.board.BoardSession;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;
import org.proviso.core.deciding.Vote;
import org.proviso.core.deciding.VotingRules;
import org.proviso.review.CaseState;

/**
 * A session as those who sit in it see it: who came, who else may come, who is recused, who keeps its record, the agenda with each case as
 * it is now, how many cases are ready and not on it, what is on the floor, the motions that ended, the newest first, and
 * the rules on vote and quorum. Times are on the county's clock.
 */
public record SessionDetails(
        BoardSession session,
        int seats,
        List<Seat> seated,
        List<Member> absent,
        List<RecusedMember> aside,
        List<Member> keepers,
        List<Item> agenda,
        int readyBesides,
        @Nullable Floor floor,
        List<BoardMotion> ended,
        List<VotingRules.Line> votingRules) {

    /** A member by the name to sign in with and the own name. */
    public record Member(UserName userName, String fullName) {}

    /** Who came, when, and until when (null while there). */
    public record Seat(
            Member person, LocalDateTime arrived, @Nullable LocalDateTime left) {}

    public record RecusedMember(Member person, EnvelopeNumber envelopeNo, String ground) {}

    /** An item of the agenda, and where its case is now, in which version. */
    public record Item(AgendaItem item, CaseState state, int version) {}

    /**
     * The motion on the floor: who moved and seconded it, whose votes are in, whose are missing, and how the reader
     * voted. How the others voted is not told before the vote is closed; {@code forecast} says what a tie and a failed motion
     * will mean.
     */
    public record Floor(
            BoardMotion motion,
            Member mover,
            @Nullable Member seconder,
            List<Member> voted,
            List<Member> missing,
            @Nullable Vote own,
            List<String> forecast) {}

    /** Who is there now. */
    public List<Member> there() {
        return seated.stream()
                .filter(seat -> seat.left() == null)
                .map(Seat::person)
                .toList();
    }

    /** The own name of a member who came to this session. */
    public String name(UserName userName) {
        return seated.stream()
                .map(Seat::person)
                .filter(person -> person.userName().equals(userName))
                .map(Member::fullName)
                .findFirst()
                .orElse(userName.value());
    }

    /** Who is recused from an envelope of the motion on the floor. */
    public List<RecusedMember> recusedFromFloor() {
        List<EnvelopeNumber> put = floor == null ? List.of() : floor.motion().putNos();
        return aside.stream()
                .filter(recused -> put.contains(recused.envelopeNo()))
                .toList();
    }

    /** From which of its envelopes a member is. */
    public List<EnvelopeNumber> recusedFromFloor(UserName userName) {
        return recusedFromFloor().stream()
                .filter(recused -> recused.person().userName().equals(userName))
                .map(RecusedMember::envelopeNo)
                .toList();
    }

    public boolean isThere(UserName userName) {
        return there().stream().anyMatch(person -> person.userName().equals(userName));
    }
}
