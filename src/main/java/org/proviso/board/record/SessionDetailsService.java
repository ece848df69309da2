package org.proviso.board.record;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.proviso.access.AccessService;
import org.proviso.access.OfficeUser;
import org.proviso.access.Permission;
import org.proviso.access.StaffList;
import org.proviso.board.AgendaItem;
import org.proviso.board.AgendaStore;
import org.proviso.board.BoardClock;
import org.proviso.board.BoardMotion;
import org.proviso.board.BoardSession;
import org.proviso.board.ElectionAsOf;
import org.proviso.board.MemberStore;
import org.proviso.board.MotionStore;
import org.proviso.board.Recusal;
import org.proviso.board.SessionKey;
import org.proviso.board.SessionMember;
import org.proviso.board.SessionStore;
import org.proviso.board.motion.BoardVote;
import org.proviso.board.motion.VoteStore;
import org.proviso.board.record.SessionDetails.Member;
import org.proviso.core.Election;
import org.proviso.core.Election.DecidingBody;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;
import org.proviso.core.deciding.VoteForecast;
import org.proviso.core.deciding.VotingRules;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;
import org.proviso.review.CaseService;
import org.proviso.review.CaseState;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.decide.DecisionService;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Shows a session to those who sit in it. It reads a few lists, however long the agenda is. */
@Service
public class SessionDetailsService {

    private final SessionStore sessions;
    private final MemberStore members;
    private final AgendaStore agenda;
    private final MotionStore motions;
    private final VoteStore votes;
    private final CaseService cases;
    private final AccessService access;
    private final StaffList staff;
    private final BoardClock clock;
    private final LedgerService ledger;
    private final DecisionService decisions;

    SessionDetailsService(
            SessionStore sessions,
            MemberStore members,
            AgendaStore agenda,
            MotionStore motions,
            VoteStore votes,
            CaseService cases,
            AccessService access,
            StaffList staff,
            BoardClock clock,
            LedgerService ledger,
            DecisionService decisions) {
        this.sessions = sessions;
        this.members = members;
        this.agenda = agenda;
        this.motions = motions;
        this.votes = votes;
        this.cases = cases;
        this.access = access;
        this.staff = staff;
        this.clock = clock;
        this.ledger = ledger;
        this.decisions = decisions;
    }

    /** Other words after anything that may change what a session looks like; cheap to ask for again and again. */
    @Transactional(readOnly = true)
    public String mark(SessionKey key) {
        access.demand(reading());
        return ledger.head(LedgerChain.of(key.electionId())).sequence() + "/" + motions.version(key);
    }

    /** A secretary reads a session too, without what was written about a voter. */
    private Permission reading() {
        return access.isPermitted(Permission.SEE_WHOLE_CASE) ? Permission.SEE_WHOLE_CASE : Permission.KEEP_RECORD;
    }

    /** The session as it is now; {@link IllegalArgumentException} where there is no such session. */
    @Transactional(readOnly = true)
    public SessionDetails details(SessionKey key) {
        Permission reading = reading();
        OfficeUser reader = access.demand(reading);
        boolean whole = reading == Permission.SEE_WHOLE_CASE;
        BoardSession session = sessions.find(key).orElseThrow(() -> SessionStore.unknown(key));
        ElectionAsOf asOf = clock.electionAsOfNow(key.electionId());
        Election election = asOf.election();
        DecidingBody seats = session.body().seats(election);
        List<SessionMember> came = members.all(key);
        List<BoardMotion> moved = motions.all(key).stream()
                .map(motion -> whole ? motion : motion.withoutWords())
                .toList();
        List<SessionDetails.Item> items = items(key);
        return new SessionDetails(
                session,
                seats.members(),
                came.stream().map(member -> seat(member, election.zone())).toList(),
                absent(members.present(key)),
                members.recusals(key).stream()
                        .map(recusal -> aside(recusal, whole))
                        .toList(),
                members.keepers(key).stream()
                        .map(keeper -> person(keeper.userName()))
                        .toList(),
                items,
                readyBesides(key.electionId(), items),
                moved.stream()
                        .filter(motion -> motion.end() == null)
                        .findFirst()
                        .map(motion -> floor(motion, reader.userName(), forecast(session, motion, asOf)))
                        .orElse(null),
                ended(moved),
                VotingRules.of(asOf.book().pack()).inWords(new DecidingBody(seats.members(), session.quorum())));
    }

    private static List<BoardMotion> ended(List<BoardMotion> moved) {
        List<BoardMotion> ended = new ArrayList<>(
                moved.stream().filter(motion -> motion.end() != null).toList());
        Collections.reverse(ended);
        return List.copyOf(ended);
    }

    /** Read with what decides the vote itself; a motion that settles nothing changes nothing where it does not carry. */
    private List<String> forecast(BoardSession session, BoardMotion motion, ElectionAsOf asOf) {
        DecidingBody seats = session.body().seats(asOf.election());
        return motion.kind()
                .asks()
                .map(asks -> VoteForecast.of(
                        motion.asking(asks),
                        seats,
                        session.body().isOneOfTwo() ? 2 : 1,
                        asOf.book(),
                        asOf.at(),
                        () -> decisions.knownToHaveVoted(motion.putNos().stream()
                                .map(session.key()::caseOf)
                                .toList())))
                .orElse(List.of("If the vote is tied or the motion fails: nothing changes."));
    }

    private SessionDetails.Floor floor(BoardMotion motion, UserName reader, List<String> forecast) {
        SessionKey key = motion.key().session();
        List<BoardVote> cast = votes.all(motion.key());
        Set<UserName> waits = new HashSet<>(members.present(key));
        cast.forEach(vote -> waits.remove(vote.userName()));
        List<EnvelopeNumber> put = motion.putNos();
        members.recused(key).forEach((member, envelopes) -> {
            if (put.stream().anyMatch(envelopes::contains)) {
                waits.remove(member);
            }
        });
        UserName seconder = motion.secondedBy();
        return new SessionDetails.Floor(
                motion,
                person(motion.movedBy()),
                seconder == null ? null : person(seconder),
                cast.stream().map(vote -> person(vote.userName())).toList(),
                waits.stream().sorted().map(this::person).toList(),
                cast.stream()
                        .filter(vote -> vote.userName().equals(reader))
                        .map(BoardVote::vote)
                        .findFirst()
                        .orElse(null),
                forecast);
    }

    private List<SessionDetails.Item> items(SessionKey key) {
        List<AgendaItem> all = agenda.all(key);
        Map<EnvelopeNumber, EnvelopeCase> known = new HashMap<>();
        if (!all.isEmpty()) {
            for (CaseState state : List.of(CaseState.READY, CaseState.DECIDED)) {
                cases.inState(key.electionId(), state)
                        .forEach(envelopeCase -> known.put(envelopeCase.key().envelopeNo(), envelopeCase));
            }
        }
        return all.stream()
                .map(item -> item(item, known.getOrDefault(item.envelopeNo(), null), key))
                .toList();
    }

    private SessionDetails.Item item(AgendaItem item, @Nullable EnvelopeCase known, SessionKey key) {
        EnvelopeCase envelopeCase = Objects.requireNonNullElseGet(
                known, () -> cases.find(key.caseOf(item.envelopeNo())).orElseThrow());
        return new SessionDetails.Item(item, envelopeCase.state(), envelopeCase.version());
    }

    private int readyBesides(ElectionId electionId, List<SessionDetails.Item> items) {
        long here = items.stream()
                .filter(itemDetails -> itemDetails.state() == CaseState.READY)
                .count();
        return cases.inState(electionId, CaseState.READY).size() - (int) here;
    }

    private List<Member> absent(Set<UserName> present) {
        return staff.usersWith(Permission.VOTE).stream()
                .filter(user -> !present.contains(user.userName()))
                .map(user -> new Member(user.userName(), user.fullName()))
                .toList();
    }

    private SessionDetails.Seat seat(SessionMember member, ZoneId zone) {
        return new SessionDetails.Seat(
                person(member.userName()), local(member.arrivedAt(), zone), left(member.leftAt(), zone));
    }

    private SessionDetails.RecusedMember aside(Recusal recusal, boolean whole) {
        return new SessionDetails.RecusedMember(
                person(recusal.userName()), recusal.envelopeNo(), whole ? recusal.ground() : "");
    }

    private Member person(UserName userName) {
        String name = staff.user(userName).map(OfficeUser::fullName).orElse(userName.value());
        return new Member(userName, name);
    }

    private static LocalDateTime local(Instant moment, ZoneId zone) {
        return LocalDateTime.ofInstant(moment, zone);
    }

    private static @Nullable LocalDateTime left(@Nullable Instant moment, ZoneId zone) {
        return moment == null ? null : local(moment, zone);
    }
}
