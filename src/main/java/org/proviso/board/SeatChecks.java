package org.proviso.board;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.proviso.access.OfficeUser;
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
                .or(() -> keepsTheRecord(session.key(), userName))
                .or(() -> alreadyIn(session.key(), userName))
                .or(() -> onTheOther(session, userName))
                .or(() -> noSeatLeft(session));
    }

    private Optional<Refusal> noDecider(UserName userName) {
        boolean may = staff.usersWith(Permission.VOTE).stream()
                .anyMatch(user -> user.userName().equals(userName));
        return may
                ? Optional.empty()
                : Optional.of(
                        Refusal.naming(Why.NO_MEMBER, Set.of(userName), "{who} is not a member of a deciding body."));
    }

    /** Whoever keeps the record of a session does not vote in it, whatever role they were given since. */
    private Optional<Refusal> keepsTheRecord(SessionKey key, UserName userName) {
        return members.keeps(key, userName)
                ? Optional.of(Refusal.naming(
                        Why.NO_MEMBER,
                        Set.of(userName),
                        "{who} keeps the record of this session and has no vote in it."))
                : Optional.empty();
    }

    /** A member notes what happens in the session; a secretary does who took its record. */
    Optional<Refusal> mayRecord(SessionKey key, OfficeUser recording) {
        return Refusal.when(
                !Permission.DECIDE.isOpenTo(recording.roles()) && !members.keeps(key, recording.userName()),
                Why.NOT_PRESENT,
                "Take the record of this session first.");
    }

    private Optional<Refusal> alreadyIn(SessionKey key, UserName userName) {
        List<Integer> where = members.sessionsWith(key.electionId(), userName);
        return where.stream()
                .findFirst()
                .map(number -> Refusal.naming(
                        Why.ALREADY_PRESENT,
                        Set.of(userName),
                        "{who} is recorded as present in session " + number + " already."));
    }

    private Optional<Refusal> onTheOther(BoardSession session, UserName userName) {
        BodyKind other = session.body().other();
        boolean sat = session.body().isOneOfTwo() && members.satOn(session.key().electionId(), other, userName);
        return sat
                ? Optional.of(Refusal.naming(
                        Why.SITS_ON_THE_OTHER_BODY,
                        Set.of(userName),
                        "{who} sat on " + other.words() + " in this election."))
                : Optional.empty();
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
