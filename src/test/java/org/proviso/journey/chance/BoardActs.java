package org.proviso.journey.chance;

import static org.proviso.journey.chance.ChanceOffice.ID;
import static org.proviso.journey.chance.ChanceOffice.key;
import static org.proviso.journey.chance.ChanceOffice.pick;
import static org.proviso.journey.chance.ChanceOffice.seen;
import static org.proviso.journey.chance.ChanceOffice.somebody;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.proviso.access.AccessService;
import org.proviso.access.Permission;
import org.proviso.board.BoardMotion;
import org.proviso.board.BoardService;
import org.proviso.board.BoardSession;
import org.proviso.board.BodyKind;
import org.proviso.board.CallSession;
import org.proviso.board.MotionKind;
import org.proviso.board.MotionStore;
import org.proviso.board.MoveMotion;
import org.proviso.board.RecordRecusal;
import org.proviso.board.SessionKey;
import org.proviso.board.agenda.AgendaLine;
import org.proviso.board.agenda.AgendaService;
import org.proviso.board.motion.CastVote;
import org.proviso.board.motion.DecideAsOfficial;
import org.proviso.board.motion.MotionService;
import org.proviso.board.motion.OfficialService;
import org.proviso.board.motion.VoteClosed;
import org.proviso.canvass.Figure;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;
import org.proviso.core.deciding.DeciderKind;
import org.proviso.core.deciding.Vote;
import org.proviso.core.rules.Reason;
import org.proviso.review.CaseState;
import org.proviso.review.Decision;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.decide.ContradictedDecision;
import org.proviso.review.decide.ContradictedDecisions;
import org.proviso.review.decide.DecidedCaseService;
import org.proviso.review.decide.DecisionService;
import org.proviso.review.decide.FollowUpService;
import org.proviso.review.ends.EndedCaseService;

/** What the deciding body does: sessions, agendas, motions, votes, and opening again. */
final class BoardActs {

    private static final List<String> MEMBERS = List.of("eve", "fay", "gil");
    private static final List<String> SECOND_BODY = List.of("hugo", "ines");
    private static final List<String> BOTH_BODIES =
            Stream.concat(MEMBERS.stream(), SECOND_BODY.stream()).toList();

    private final ChanceOffice office;

    BoardActs(ChanceOffice office) {
        this.office = office;
    }

    /** Who sits on a body. */
    static List<String> members(BodyKind body) {
        return body == BodyKind.SECOND ? SECOND_BODY : MEMBERS;
    }

    /** Anybody who sits on a body of this election. */
    private List<String> members() {
        return office.election().decider() == DeciderKind.TWO_BODIES ? BOTH_BODIES : MEMBERS;
    }

    private BoardService board() {
        return office.the(BoardService.class);
    }

    private MotionService motions() {
        return office.the(MotionService.class);
    }

    List<BoardSession> sessions() {
        return office.read("eve", () -> board().sessions(ID)).stream()
                .filter(session -> session.closedAt() == null)
                .toList();
    }

    private Optional<BoardSession> session(Random random) {
        List<BoardSession> sessions = sessions();
        return sessions.isEmpty() ? Optional.empty() : Optional.of(pick(random, sessions));
    }

    private Optional<BoardSession> openSession(Random random) {
        List<BoardSession> open =
                sessions().stream().filter(BoardSession::isOpen).toList();
        return open.isEmpty() ? Optional.empty() : Optional.of(pick(random, open));
    }

    Optional<Attempt<?>> call(Random random) {
        BodyKind body = random.nextInt(8) == 0
                ? pick(random, List.of(BodyKind.values()))
                : pick(random, BodyKind.forDecider(office.election().decider()));
        return sessions().size() > 1
                ? Optional.empty()
                : Optional.of(called(somebody(random, Permission.DECIDE), body));
    }

    Attempt<?> called(String who, BodyKind body) {
        return Attempt.of(
                who,
                Permission.DECIDE,
                "calls a session of " + body.words(),
                () -> board().callSession(new CallSession(ID, body, office.now().plusMinutes(5), "Board room")));
    }

    Optional<Attempt<?>> open(Random random) {
        return session(random)
                .map(session -> opened(somebody(random, Permission.DECIDE), session, seen(random, session.version())));
    }

    Attempt<?> opened(String who, BoardSession session, Attempt.Version version) {
        return Attempt.of(
                        who,
                        Permission.DECIDE,
                        "opens " + session.key().subject(),
                        () -> board().open(session.key(), version.number()))
                .with(version);
    }

    Optional<Attempt<?>> arrive(Random random) {
        return session(random)
                .map(session -> arrived(somebody(random, Permission.DECIDE), session, pick(random, members())));
    }

    Attempt<?> arrived(String who, BoardSession session, String member) {
        return Attempt.of(
                who,
                Permission.DECIDE,
                "notes that " + member + " came to " + session.key().subject(),
                () -> board().recordArrival(session.key(), new UserName(member)));
    }

    Optional<Attempt<?>> leave(Random random) {
        String member = pick(random, members());
        return openSession(random)
                .map(session -> Attempt.of(
                        somebody(random, Permission.DECIDE),
                        Permission.DECIDE,
                        "notes that " + member + " left",
                        () -> board().recordDeparture(session.key(), new UserName(member))));
    }

    Optional<Attempt<?>> recuse(Random random) {
        String member = pick(random, members());
        EnvelopeNumber number = pick(random, office.cases()).key().envelopeNo();
        return openSession(random)
                .map(session -> Attempt.of(
                        somebody(random, Permission.DECIDE),
                        Permission.DECIDE,
                        "notes that " + member + " is recused from " + number,
                        () -> board().recuse(new RecordRecusal(
                                session.key(), number, new UserName(member), "A neighbor."))));
    }

    Optional<Attempt<?>> addAll(Random random) {
        return session(random).map(session -> addedAll(somebody(random, Permission.DECIDE), session.key()));
    }

    /** Without an entry where nothing was to be put. */
    Attempt<?> addedAll(String who, SessionKey session) {
        int before = agenda(session).size();
        return Attempt.of(
                        who,
                        Permission.DECIDE,
                        "puts everything ready on the agenda of " + session.subject(),
                        () -> office.the(AgendaService.class).addAllReady(session))
                .entered(items -> items.size() > before);
    }

    Optional<Attempt<?>> add(Random random) {
        EnvelopeCase found = pick(random, office.cases());
        return session(random)
                .map(session -> Attempt.of(
                                somebody(random, Permission.DECIDE),
                                Permission.DECIDE,
                                "puts " + found.key().envelopeNo() + " on the agenda",
                                () -> office.the(AgendaService.class)
                                        .addToAgenda(
                                                session.key(),
                                                List.of(found.key().envelopeNo())))
                        .entered(items -> false));
    }

    List<AgendaLine> agenda(SessionKey session) {
        return office.read("eve", () -> office.the(AgendaService.class).agenda(session));
    }

    Optional<Attempt<?>> pullOut(Random random) {
        return session(random).flatMap(session -> {
            List<AgendaLine> agenda = agenda(session.key());
            if (agenda.isEmpty()) {
                return Optional.empty();
            }
            AgendaLine line = pick(random, agenda);
            return Optional.of(pulledOut(
                    somebody(random, Permission.PULL_OUT),
                    session.key(),
                    line,
                    seen(random, line.item().version())));
        });
    }

    Attempt<?> pulledOut(String who, SessionKey session, AgendaLine line, Attempt.Version version) {
        return Attempt.of(
                        who,
                        Permission.PULL_OUT,
                        "pulls " + line.item().envelopeNo() + " out of its group",
                        () -> office.the(AgendaService.class)
                                .removeFromGroup(session, line.item().envelopeNo(), version.number()))
                .with(version);
    }

    /** What is still to be voted on, in its groups. */
    List<List<AgendaLine>> groups(SessionKey session) {
        Map<String, List<AgendaLine>> groups = new TreeMap<>();
        for (AgendaLine line : agenda(session)) {
            if (line.now().state() == CaseState.READY) {
                String group = line.item().standsAlone()
                        ? "alone " + line.item().envelopeNo()
                        : "group " + line.item().group();
                groups.computeIfAbsent(group, any -> new java.util.ArrayList<>())
                        .add(line);
            }
        }
        return List.copyOf(groups.values());
    }

    /** Mostly what is proposed for a group; now and then anything, or to open a decided one again. */
    Optional<Attempt<?>> move(Random random) {
        return openSession(random).flatMap(session -> {
            List<List<AgendaLine>> groups = groups(session.key());
            List<AgendaLine> all = agenda(session.key());
            if (all.isEmpty()) {
                return Optional.empty();
            }
            boolean any = groups.isEmpty() || random.nextInt(5) == 0;
            List<AgendaLine> group = any ? List.of(pick(random, all)) : pick(random, groups);
            MotionKind kind = any
                    ? pick(random, List.of(MotionKind.values()))
                    : proposed(group).orElse(MotionKind.COUNT);
            return Optional.of(moved(somebody(random, Permission.DECIDE), session.key(), group, kind));
        });
    }

    static Optional<MotionKind> proposed(List<AgendaLine> group) {
        return Optional.ofNullable(group.get(0).item().proposed()).map(as -> MotionKind.valueOf(as.name()));
    }

    Attempt<BoardMotion> moved(String who, SessionKey session, List<AgendaLine> group, MotionKind kind) {
        Map<EnvelopeNumber, Integer> envelopes = new LinkedHashMap<>();
        group.forEach(line -> envelopes.put(line.item().envelopeNo(), line.now().version()));
        Reason primary = group.get(0).item().primaryReason();
        List<Reason> reasons =
                kind == MotionKind.REJECT ? List.of(primary == null ? Reason.REGISTERED_LATE : primary) : List.of();
        return Attempt.of(
                who,
                Permission.DECIDE,
                "moves to " + kind.words() + " " + envelopes.keySet(),
                () -> motions()
                        .move(new MoveMotion(
                                session,
                                kind,
                                envelopes,
                                Set.of(),
                                reasons,
                                kind == MotionKind.REJECT ? "As proposed" : "",
                                "The body sees it so.")));
    }

    /** Whether this body voted on all of these, and the other did not yet. */
    boolean waitsForTheOther(BoardSession session, List<AgendaLine> group) {
        return office.the(MotionStore.class).waiting(ID, session.body()).stream()
                .anyMatch(motion -> group.stream()
                        .allMatch(line -> motion.put().stream()
                                .anyMatch(put -> put.envelopeNo()
                                                .equals(line.item().envelopeNo())
                                        && put.caseVersion() == line.now().version())));
    }

    Optional<BoardMotion> pending(SessionKey session) {
        return office.read("eve", () -> motions().motions(session)).stream()
                .filter(motion -> motion.end() == null)
                .findFirst();
    }

    private Optional<BoardMotion> pending(Random random) {
        return openSession(random).flatMap(session -> pending(session.key()));
    }

    Optional<Attempt<?>> put(Random random) {
        return pending(random)
                .map(motion -> put(somebody(random, Permission.DECIDE), motion, seen(random, motion.version())));
    }

    Attempt<?> put(String who, BoardMotion motion, Attempt.Version version) {
        return Attempt.of(
                        who,
                        Permission.DECIDE,
                        "puts " + motion.key().subject() + " to the vote",
                        () -> motions().putToVote(motion.key(), version.number()))
                .with(version);
    }

    Optional<Attempt<?>> secondMotion(Random random) {
        return pending(random).map(motion -> {
            Attempt.Version version = seen(random, motion.version());
            return Attempt.of(
                            somebody(random, Permission.DECIDE),
                            Permission.DECIDE,
                            "seconds " + motion.key().subject(),
                            () -> motions().second(motion.key(), version.number()))
                    .with(version);
        });
    }

    Optional<Attempt<?>> vote(Random random) {
        Vote vote = random.nextInt(4) == 0 ? pick(random, List.of(Vote.values())) : Vote.YES;
        return pending(random)
                .map(motion -> voted(somebody(random, Permission.VOTE), motion, pick(random, members()), vote));
    }

    /** A vote is in the ledger only once it is closed. */
    Attempt<?> voted(String who, BoardMotion motion, String member, Vote vote) {
        return Attempt.of(
                        who,
                        Permission.VOTE,
                        "notes that " + member + " votes " + vote + " on "
                                + motion.key().subject(),
                        () -> motions().vote(new CastVote(motion.key(), new UserName(member), vote)))
                .entered(any -> false);
    }

    Optional<Attempt<?>> withdrawMotion(Random random) {
        return pending(random)
                .map(motion -> withdrawn(somebody(random, Permission.DECIDE), motion, seen(random, motion.version())));
    }

    Attempt<?> withdrawn(String who, BoardMotion motion, Attempt.Version version) {
        return Attempt.of(
                        who,
                        Permission.DECIDE,
                        "withdraws " + motion.key().subject(),
                        () -> motions().withdraw(motion.key(), version.number()))
                .with(version);
    }

    Optional<Attempt<?>> closeVote(Random random) {
        return pending(random)
                .map(motion -> voteClosed(somebody(random, Permission.DECIDE), motion, seen(random, motion.version())));
    }

    Attempt<?> voteClosed(String who, BoardMotion motion, Attempt.Version version) {
        Map<EnvelopeNumber, Figure> before = ends();
        boolean changed = motion.put().stream()
                .anyMatch(put -> office.now(key(put.envelopeNo())).version() != put.caseVersion());
        return Attempt.of(
                        who,
                        Permission.DECIDE,
                        "closes the vote on " + motion.key().subject(),
                        () -> motions().close(motion.key(), version.number()))
                .with(version)
                .orStale(changed)
                .then(closed -> follow(closed, before));
    }

    /** The ends of envelopes as the decisions that stand have them. */
    Map<EnvelopeNumber, Figure> ends() {
        Map<EnvelopeNumber, Figure> ends = new TreeMap<>();
        office.the(DecisionService.class)
                .standing(ID)
                .forEach((number, decision) -> ends.put(number, PlainFigures.of(decision.as())));
        for (EnvelopeCase over :
                office.cases(one -> one.state() == CaseState.SENT_ON || one.state() == CaseState.ENDED)) {
            ends.put(over.key().envelopeNo(), over.state() == CaseState.ENDED ? Figure.ENDED : Figure.SENT_ON);
        }
        return ends;
    }

    private void follow(VoteClosed closed, Map<EnvelopeNumber, Figure> before) {
        if (closed instanceof VoteClosed.Settled settled) {
            for (EnvelopeCase now : settled.now()) {
                if (now.state() == CaseState.DECIDED) {
                    office.figures()
                            .settled(
                                    before.get(now.key().envelopeNo()),
                                    PlainFigures.of(decision(now.key()).as()));
                } else {
                    office.figures().undecidedAgain(end(before, now.key().envelopeNo()));
                }
            }
        }
    }

    private static Figure end(Map<EnvelopeNumber, Figure> ends, EnvelopeNumber number) {
        return Objects.requireNonNull(ends.get(number), "what is opened again had an end");
    }

    private Decision decision(EnvelopeKey key) {
        return office.the(DecisionService.class).standing(key).orElseThrow();
    }

    Optional<Attempt<?>> close(Random random) {
        return session(random)
                .map(session -> closed(somebody(random, Permission.DECIDE), session, seen(random, session.version())));
    }

    /** A session that was closed by mistake, or one that is not closed at all. */
    Optional<Attempt<?>> reopenSession(Random random) {
        List<BoardSession> all = sessions();
        if (all.isEmpty()) {
            return Optional.empty();
        }
        BoardSession session = pick(random, all);
        Attempt.Version version = seen(random, session.version());
        return Optional.of(Attempt.of(
                        somebody(random, Permission.DECIDE),
                        Permission.DECIDE,
                        "reopens " + session.key().subject(),
                        () -> board().reopen(session.key(), version.number(), "It was closed too early."))
                .with(version));
    }

    Attempt<?> closed(String who, BoardSession session, Attempt.Version version) {
        return Attempt.of(
                        who,
                        Permission.DECIDE,
                        "closes " + session.key().subject(),
                        () -> board().close(session.key(), version.number()))
                .with(version);
    }

    Optional<Attempt<?>> sendBack(Random random) {
        List<EnvelopeCase> some = Stream.of(CaseState.PROPOSED, CaseState.READY)
                .flatMap(state -> office.in(state).stream())
                .toList();
        EnvelopeCase found = some.isEmpty() ? pick(random, office.cases()) : pick(random, some);
        return Optional.of(sentBack(somebody(random, Permission.PULL_OUT), found, seen(random, found.version())));
    }

    Attempt<?> sentBack(String who, EnvelopeCase found, Attempt.Version version) {
        return Attempt.of(
                        who,
                        Permission.PULL_OUT,
                        "sends " + found.key().envelopeNo() + " back",
                        () -> office.the(DecidedCaseService.class)
                                .sendBack(found.key(), version.number(), "Look again."))
                .with(version);
    }

    /** Mostly a case that is over. */
    List<ContradictedDecision> contradicted() {
        return office.read("eve", () -> office.the(FollowUpService.class).open(ID));
    }

    /** A decision that a newer record contradicts is followed up by somebody, as far as it can be. */
    Optional<Attempt<?>> followUp(Random random) {
        List<ContradictedDecision> open = contradicted();
        return open.isEmpty()
                ? Optional.empty()
                : Optional.of(followedUp(somebody(random, Permission.DECIDE), pick(random, open)));
    }

    Attempt<?> followedUp(String who, ContradictedDecision found) {
        if (found.isTheDeciders() || found.state() == CaseState.SENT_ON) {
            return reopened(who, office.now(found.key()), new Attempt.Version(found.version(), false));
        }
        return Attempt.of(
                who,
                Permission.FOLLOW_UP,
                "follows up " + found.key().envelopeNo(),
                () -> office.the(FollowUpService.class)
                        .record(found.key(), found.version(), "Told the county's attorney."));
    }

    /** As the vote on a motion to let it stand does when it carries. */
    Attempt<?> letStand(String who, ContradictedDecision found) {
        return Attempt.of(
                who,
                Permission.DECIDE,
                "lets the decision on " + found.key().envelopeNo() + " stand",
                () -> office.services()
                        .inTransaction(() -> office.the(ContradictedDecisions.class)
                                .letStand(
                                        found.key(),
                                        found.version(),
                                        "The board looked at it again.",
                                        office.the(AccessService.class).signedIn(),
                                        1,
                                        1)));
    }

    Optional<Attempt<?>> reopen(Random random) {
        List<EnvelopeCase> over = office.cases(one -> one.state().isOver());
        EnvelopeCase found =
                over.isEmpty() || random.nextInt(8) == 0 ? pick(random, office.cases()) : pick(random, over);
        return Optional.of(reopened(somebody(random, Permission.DECIDE), found, seen(random, found.version())));
    }

    Attempt<?> reopened(String who, EnvelopeCase found, Attempt.Version version) {
        Map<EnvelopeNumber, Figure> before = ends();
        return Attempt.of(
                        who,
                        Permission.DECIDE,
                        "opens " + found.key().envelopeNo() + " again",
                        () -> office.the(DecidedCaseService.class)
                                .reopen(found.key(), version.number(), "A paper was found."))
                .with(version)
                .then(now ->
                        office.figures().undecidedAgain(end(before, found.key().envelopeNo())));
    }

    /** A case that was sent on or closed without a decision is opened again from its page. */
    Optional<Attempt<?>> reopenEnded(Random random) {
        List<EnvelopeCase> some = Stream.of(CaseState.SENT_ON, CaseState.ENDED)
                .flatMap(state -> office.in(state).stream())
                .toList();
        EnvelopeCase found = some.isEmpty() ? pick(random, office.cases()) : pick(random, some);
        Attempt.Version version = seen(random, found.version());
        Map<EnvelopeNumber, Figure> before = ends();
        return Optional.of(Attempt.of(
                        somebody(random, Permission.REOPEN_ENDED),
                        Permission.REOPEN_ENDED,
                        "takes " + found.key().envelopeNo() + " back",
                        () -> office.the(EndedCaseService.class)
                                .reopen(found.key(), version.number(), "The envelope came back."))
                .with(version)
                .then(now ->
                        office.figures().undecidedAgain(end(before, found.key().envelopeNo()))));
    }

    /** Where a board decides, no official does. */
    Optional<Attempt<?>> official(Random random) {
        List<EnvelopeCase> ready = office.in(CaseState.READY);
        if (ready.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(decidedAlone(
                somebody(random, Permission.DECIDE),
                pick(random, ready),
                pick(random, List.of(MotionKind.values())),
                Reason.REGISTERED_LATE));
    }

    Attempt<?> decidedAlone(String who, EnvelopeCase found, MotionKind kind, Reason reason) {
        Map<EnvelopeNumber, Figure> before = ends();
        return Attempt.of(
                        who,
                        Permission.DECIDE,
                        "decides alone to " + kind.words() + " " + found.key().envelopeNo(),
                        () -> office.the(OfficialService.class)
                                .decide(new DecideAsOfficial(
                                        ID,
                                        kind,
                                        Map.of(found.key().envelopeNo(), found.version()),
                                        Set.of(),
                                        kind == MotionKind.REJECT ? List.of(reason) : List.of(),
                                        "As proposed",
                                        "The official sees it so.")))
                .then(closed -> follow(closed, before));
    }
}
