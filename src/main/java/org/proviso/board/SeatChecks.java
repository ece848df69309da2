package org.proviso.board;

import java.util.List;
import java.util.Optional;
import org.proviso.access.Permission;
import org.proviso.access.StaffList;
import org.proviso.core.UserName;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.springframework.stereotype.Component;

/**
 * Whether somebody may take a seat in a session: a decider, in one session at a time, with a seat left, and on one of
 * two bodies only (common practice).
 */
@Component
class SeatChecks {

    private final MemberStore members;
    private final StaffList staff;
    private final BoardClock clock;

    SeatChecks(MemberStore members, StaffList staff, BoardClock clock) {
        this.members = members;
        this.staff = staff;
        this.clock = clock;
    }

    Optional<Refusal> refusal(BoardSession session, UserName userName) {
        return noDecider(userName)
                .or(() -> alreadyIn(session.key(), userName))
                .or(() -> onTheOther(session, userName))
                .or(() -> noSeatLeft(session));
    }

    private Optional<Refusal> noDecider(UserName userName) {
        boolean may = staff.usersWith(Permission.VOTE).stream()
                .anyMatch(user -> user.userName().equals(userName));
        return Refusal.when(!may, Why.NO_MEMBER, userName + " is not a member of a deciding body.");
    }

    private Optional<Refusal> alreadyIn(SessionKey key, UserName userName) {
        List<Integer> where = members.sessionsWith(key.electionId(), userName);
        return where.stream()
                .findFirst()
                .map(number -> Refusal.of(
                        Why.ALREADY_PRESENT, userName + " is recorded as present in session " + number + " already."));
    }

    private Optional<Refusal> onTheOther(BoardSession session, UserName userName) {
        BodyKind other = session.body().other();
        return Refusal.when(
                session.body().isOneOfTwo() && members.satOn(session.key().electionId(), other, userName),
                Why.SITS_ON_THE_OTHER_BODY,
                userName + " sat on " + other.words() + " in this election.");
    }

    private Optional<Refusal> noSeatLeft(BoardSession session) {
        int seats = session.body()
                .seats(clock.electionAsOfNow(session.key().electionId()).election())
                .members();
        return Refusal.when(
                members.present(session.key()).size() >= seats,
                Why.MORE_PRESENT_THAN_MEMBERS,
                "All " + seats + " seats of " + session.body().words() + " are taken.");
    }
}
