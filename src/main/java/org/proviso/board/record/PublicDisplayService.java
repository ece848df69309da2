package org.proviso.board.record;

import java.security.SecureRandom;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.proviso.access.AccessService;
import org.proviso.access.Permission;
import org.proviso.board.AgendaItem;
import org.proviso.board.AgendaStore;
import org.proviso.board.BoardClock;
import org.proviso.board.BoardMotion;
import org.proviso.board.BoardSession;
import org.proviso.board.MemberStore;
import org.proviso.board.MotionStore;
import org.proviso.board.SessionKey;
import org.proviso.board.SessionMember;
import org.proviso.board.SessionStore;
import org.proviso.board.motion.BoardVote;
import org.proviso.board.motion.VoteStore;
import org.proviso.core.Election;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.deciding.Vote;
import org.proviso.core.rules.Reason;
import org.proviso.review.CaseService;
import org.proviso.review.CaseState;
import org.proviso.review.EnvelopeCase;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * The display in the room of a session. A decider or a supervisor makes its link, which shows that one session without
 * a sign-in. Links are kept in memory only: they end when the server stops.
 */
@Service
public class PublicDisplayService {

    private static final int TOKEN_BYTES = 18;

    private final SessionStore sessions;
    private final MemberStore members;
    private final AgendaStore agenda;
    private final MotionStore motions;
    private final VoteStore votes;
    private final CaseService cases;
    private final AccessService access;
    private final BoardClock clock;
    private final SecureRandom random = new SecureRandom();
    private final Map<String, SessionKey> open = new ConcurrentHashMap<>();

    PublicDisplayService(
            SessionStore sessions,
            MemberStore members,
            AgendaStore agenda,
            MotionStore motions,
            VoteStore votes,
            CaseService cases,
            AccessService access,
            BoardClock clock) {
        this.sessions = sessions;
        this.members = members;
        this.agenda = agenda;
        this.motions = motions;
        this.votes = votes;
        this.cases = cases;
        this.access = access;
        this.clock = clock;
    }

    /** The token of the display of that session; the same one while the server runs. */
    @Transactional(readOnly = true)
    public synchronized String link(SessionKey key) {
        access.demand(access.isPermitted(Permission.SET_GATES) ? Permission.SET_GATES : Permission.DECIDE);
        if (sessions.find(key).isEmpty()) {
            throw SessionStore.unknown(key);
        }
        return open.entrySet().stream()
                .filter(entry -> entry.getValue().equals(key))
                .map(Map.Entry::getKey)
                .findFirst()
                .orElseGet(() -> made(key));
    }

    private String made(SessionKey key) {
        byte[] bytes = new byte[TOKEN_BYTES];
        random.nextBytes(bytes);
        String token = Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
        open.put(token, key);
        return token;
    }

    /**
     * What the display of that token shows now; empty where there is no such display. It demands no role:
     * the token is the permission, and what it shows is public.
     */
    @Transactional(readOnly = true)
    public Optional<PublicDisplay> show(String token) {
        return Optional.ofNullable(open.get(token)).flatMap(sessions::find).map(this::view);
    }

    private PublicDisplay view(BoardSession session) {
        SessionKey key = session.key();
        Election election = clock.electionAsOfNow(key.electionId()).election();
        List<AgendaItem> items = agenda.all(key);
        List<BoardMotion> moved = motions.all(key);
        return new PublicDisplay(
                session.body(),
                election.name(),
                session.place(),
                session.calledFor(),
                local(session.openedAt(), election.zone()),
                local(session.closedAt(), election.zone()),
                (int) members.all(key).stream().filter(SessionMember::isThere).count(),
                session.body().seats(election).members(),
                session.quorum(),
                groups(items),
                groups(items.stream().filter(ahead(key, items, moved)).toList()),
                moved.stream().map(this::moved).toList());
    }

    /** What is still to be voted on: ready, or decided and listed to be opened again; and not on the floor now. */
    private Predicate<AgendaItem> ahead(SessionKey key, List<AgendaItem> items, List<BoardMotion> moved) {
        Map<EnvelopeNumber, EnvelopeCase> now = cases.find(
                key.electionId(), items.stream().map(AgendaItem::envelopeNo).toList());
        Set<EnvelopeNumber> onTheFloor = moved.stream()
                .filter(motion -> motion.end() == null)
                .flatMap(motion -> motion.putNos().stream())
                .collect(Collectors.toSet());
        return item -> {
            EnvelopeCase found = now.get(item.envelopeNo());
            return found != null
                    && found.state() == (item.proposed() == null ? CaseState.DECIDED : CaseState.READY)
                    && !onTheFloor.contains(item.envelopeNo());
        };
    }

    private static List<PublicDisplay.Group> groups(List<AgendaItem> items) {
        Map<Object, List<AgendaItem>> groups = new LinkedHashMap<>();
        for (AgendaItem item : items) {
            Object group = item.standsAlone() ? item.envelopeNo() : item.group();
            groups.computeIfAbsent(group, any -> new ArrayList<>()).add(item);
        }
        return groups.values().stream().map(PublicDisplayService::group).toList();
    }

    private static PublicDisplay.Group group(List<AgendaItem> items) {
        AgendaItem first = items.get(0);
        Reason reason = first.primaryReason();
        return new PublicDisplay.Group(
                first.proposed(),
                reason == null ? "" : reason.words(),
                items.stream().map(AgendaItem::envelopeNo).toList());
    }

    private PublicDisplay.MotionLine moved(BoardMotion motion) {
        boolean ended = motion.end() != null;
        List<BoardVote> cast = ended ? votes.all(motion.key()) : List.of();
        int yes = count(cast, Vote.YES);
        int no = count(cast, Vote.NO);
        return new PublicDisplay.MotionLine(
                motion.key().motionNo(),
                motion.kind(),
                motion.putNos(),
                motion.reasons().stream().map(Reason::words).toList(),
                motion.putAt() != null,
                ended,
                yes,
                no,
                cast.size() - yes - no,
                ended && motion.words() != null ? motion.words() : "");
    }

    private static int count(List<BoardVote> cast, Vote as) {
        return (int) cast.stream().filter(boardVote -> boardVote.vote() == as).count();
    }

    private static @Nullable LocalDateTime local(@Nullable Instant moment, ZoneId zone) {
        return moment == null ? null : LocalDateTime.ofInstant(moment, zone);
    }
}
