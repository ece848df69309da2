package org.proviso.board.motion;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.proviso.access.OfficeUser;
import org.proviso.access.Permission;
import org.proviso.access.StaffList;
import org.proviso.board.AgendaItem;
import org.proviso.board.AgendaStore;
import org.proviso.board.BoardMotion;
import org.proviso.board.BoardSession;
import org.proviso.board.MemberStore;
import org.proviso.board.MotionKind;
import org.proviso.board.MotionStore;
import org.proviso.board.MoveMotion;
import org.proviso.board.ProposalForDecision;
import org.proviso.board.ProposalsForDecision;
import org.proviso.board.SessionChecks;
import org.proviso.board.SessionKey;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.Key;
import org.proviso.core.UserName;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.deciding.CountAgainstRules;
import org.proviso.core.deciding.DecisionChecks;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.core.deciding.Grounds;
import org.proviso.election.OtherBallots;
import org.proviso.review.CaseService;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.decide.ContradictedDecisions;
import org.proviso.review.decide.DecisionService;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.stereotype.Component;

/** What stands in the way of a motion, seen before anybody votes on it. */
@Component
class MotionChecks {

    private final AgendaStore agenda;
    private final MemberStore members;
    private final MotionStore motions;
    private final ProposalsForDecision proposals;
    private final CaseService cases;
    private final ContradictedDecisions contradicted;
    private final DecisionService decisions;
    private final OtherBallots others;
    private final StaffList staff;

    MotionChecks(
            AgendaStore agenda,
            MemberStore members,
            MotionStore motions,
            ProposalsForDecision proposals,
            CaseService cases,
            ContradictedDecisions contradicted,
            DecisionService decisions,
            OtherBallots others,
            StaffList staff) {
        this.staff = staff;
        this.agenda = agenda;
        this.members = members;
        this.motions = motions;
        this.proposals = proposals;
        this.cases = cases;
        this.contradicted = contradicted;
        this.decisions = decisions;
        this.others = others;
    }

    /** Whoever acts on a motion must sit in the session, and it must be open. */
    Optional<Refusal> sitting(BoardSession session, UserName userName) {
        return SessionChecks.open(session).or(() -> SessionChecks.present(members.present(session.key()), userName));
    }

    /** Whoever notes something sits in the session, or keeps its record and has no vote in it. */
    Optional<Refusal> recording(BoardSession session, OfficeUser user) {
        if (Permission.DECIDE.isOpenTo(user.roles())) {
            return sitting(session, user.userName());
        }
        return SessionChecks.open(session)
                .or(() -> Refusal.when(
                        !members.keeps(session.key(), user.userName()),
                        Why.NOT_PRESENT,
                        "Take the record of this session first."));
    }

    /** Whoever votes sits in the session, and still is a member of a deciding body. */
    Optional<Refusal> voting(BoardSession session, UserName userName) {
        return sitting(session, userName)
                .or(() -> staff.usersWith(Permission.VOTE).stream()
                                .anyMatch(user -> user.userName().equals(userName))
                        ? Optional.empty()
                        : Optional.of(Refusal.naming(
                                Why.NO_MEMBER, Set.of(userName), "{who} is not a member of a deciding body.")));
    }

    /** The motion must be before the session. */
    static Optional<Refusal> pending(BoardMotion motion) {
        return Refusal.when(
                motion.end() != null,
                Why.MOTION_ALREADY_DECIDED,
                "Motion " + motion.key().motionNo() + " has ended.");
    }

    /** Another member than the mover, and once. */
    static Optional<Refusal> mayBeSeconded(BoardMotion motion, UserName member) {
        return Refusal.when(
                        motion.movedBy().equals(member),
                        Why.OWN_ACT,
                        "You made this motion. Another member has to second it.")
                .or(() -> Refusal.when(
                        motion.secondedBy() != null, Why.NOT_IN_THIS_STATE, "The motion is seconded already."));
    }

    /** The motion must have been put to the vote. */
    static Optional<Refusal> put(BoardMotion motion) {
        return pending(motion)
                .or(() -> Refusal.when(
                        motion.putAt() == null,
                        Why.NOT_IN_THIS_STATE,
                        "Motion " + motion.key().motionNo() + " is not open for a vote yet."));
    }

    /** Nobody who is recused from an envelope moves, seconds or votes on it. */
    Optional<Refusal> recused(SessionKey session, UserName userName, Set<EnvelopeNumber> envelopes, Why why) {
        List<EnvelopeNumber> aside = members.recused(session).getOrDefault(userName, Set.of()).stream()
                .filter(envelopes::contains)
                .sorted()
                .toList();
        return aside.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        Refusal.naming(why, Set.of(userName), "{who} is recused from " + Key.join(", ", aside) + "."));
    }

    Optional<Refusal> move(BoardSession session, MoveMotion move, UserName mover) {
        return sitting(session, mover)
                .or(() -> SessionChecks.nothingPending(motions.pending(session.key())))
                .or(() -> othersFirst(session, move.kind()))
                .or(() -> listed(move))
                .or(() -> recused(session.key(), mover, move.envelopes().keySet(), Why.RECUSED_MEMBER_MOVED))
                .or(() -> contests(move))
                .or(() -> together(move))
                .or(() -> grounds(move))
                .or(() -> states(move))
                .or(() -> contradicted(move));
    }

    /** Nothing is decided before all other ballots are counted, where the pack says so. */
    Optional<Refusal> othersFirst(BoardSession session, MotionKind kind) {
        return kind.asks().isPresent() ? others.beforeDeciding(session.key().electionId()) : Optional.empty();
    }

    /** Only a decision that a newer record contradicts is let stand by a vote. */
    private Optional<Refusal> contradicted(MoveMotion move) {
        return move.kind() == MotionKind.LET_STAND
                ? move.envelopes().keySet().stream()
                        .map(move.session()::caseOf)
                        .filter(key -> contradicted.open(key).isEmpty())
                        .findFirst()
                        .map(key -> Refusal.of(
                                        Why.NOTHING_NEW,
                                        "The rules say nothing new about it: the decision stands without a motion.")
                                .about(key.envelopeNo()))
                : Optional.empty();
    }

    /** The envelopes that a motion would count against the rules' answer. */
    Map<EnvelopeNumber, CountAgainstRules> against(MoveMotion move) {
        List<EnvelopeKey> keys =
                move.envelopes().keySet().stream().map(move.session()::caseOf).toList();
        return move.kind()
                .asks()
                .map(asks -> decisions.againstTheRules(keys, asks, move.contests()))
                .orElse(Map.of());
    }

    /** Whoever moves that says where the law allows it, and why. */
    static List<Refusal> groundsAgainst(MoveMotion move, Map<EnvelopeNumber, CountAgainstRules> against) {
        Grounds grounds = new Grounds(move.reasons(), move.legalReference(), move.because());
        List<Refusal> refusals = new ArrayList<>();
        against.forEach((envelope, rules) -> DecisionChecks.referenceAgainst(rules, grounds)
                .or(() -> DecisionChecks.reasonAgainst(rules, grounds))
                .ifPresent(refusal -> refusals.add(refusal.about(envelope))));
        return refusals;
    }

    private Optional<Refusal> listed(MoveMotion move) {
        Map<EnvelopeNumber, AgendaItem> items =
                agenda.find(move.session(), move.envelopes().keySet());
        return move.envelopes().keySet().stream()
                .sorted()
                .flatMap(
                        envelope -> SessionChecks.onAgenda(Optional.ofNullable(items.get(envelope)), envelope).stream())
                .findFirst();
    }

    /** Several envelopes go together only as the group they are in, and only for what was proposed of them. */
    private Optional<Refusal> together(MoveMotion move) {
        if (move.envelopes().size() == 1) {
            return Optional.empty();
        }
        if (move.kind().isOfDecided()) {
            return Optional.of(Refusal.of(Why.NOT_ONE_GROUP, "Decided envelopes are moved one at a time."));
        }
        List<AgendaItem> items = items(move);
        boolean oneGroup = items.stream().noneMatch(AgendaItem::standsAlone)
                && items.stream().map(AgendaItem::group).distinct().count() == 1;
        boolean asProposed = move.kind().asks().isEmpty()
                || items.stream().allMatch(item -> move.kind().asks().get() == item.proposed());
        return Refusal.when(
                        !oneGroup, Why.NOT_ONE_GROUP, "These envelopes are not one consent group. Move each by itself.")
                .or(
                        () -> Refusal.when(
                                !asProposed,
                                Why.NOT_ONE_GROUP,
                                "A group can be moved only as proposed. To move an envelope another way, pull it out of the group."))
                .or(() -> changed(move, items));
    }

    private Optional<Refusal> changed(MoveMotion move, List<AgendaItem> items) {
        Map<EnvelopeNumber, ProposalForDecision> proposed =
                proposals.find(move.session().electionId(), move.envelopes().keySet());
        return items.stream()
                .filter(item -> Optional.ofNullable(proposed.get(item.envelopeNo()))
                        .filter(found -> found.isAsOn(item))
                        .isEmpty())
                .findFirst()
                .map(item -> Refusal.of(
                        Why.NOT_IN_THIS_STATE,
                        "The proposal for " + item.envelopeNo()
                                + " changed after it came on the agenda. Add it to the agenda again."));
    }

    private static Optional<Refusal> contests(MoveMotion move) {
        boolean oneInPart =
                move.kind() == MotionKind.COUNT_IN_PART && move.envelopes().size() == 1;
        return move.contests().isEmpty() || oneInPart
                ? Optional.empty()
                : Optional.of(Refusal.at(
                        "contests",
                        Why.NO_CONTESTS,
                        "Choose contests only to count one envelope in part. Leave the box empty otherwise."));
    }

    private static Optional<Refusal> grounds(MoveMotion move) {
        Optional<DecisionOutcome> asks = move.kind().asks();
        Grounds grounds = new Grounds(move.reasons(), move.legalReference(), move.because());
        if (asks.isPresent()) {
            return DecisionChecks.grounds(asks.get(), grounds);
        }
        return move.because().isBlank()
                ? Optional.of(Refusal.at(
                        "because",
                        Why.NO_REASON,
                        "Enter the reason to " + move.kind().words() + "."))
                : Optional.empty();
    }

    private Optional<Refusal> states(MoveMotion move) {
        List<Refusal> refusals = new ArrayList<>();
        Map<EnvelopeNumber, EnvelopeCase> found =
                cases.find(move.session().electionId(), move.envelopes().keySet());
        move.envelopes().forEach((envelope, seen) -> {
            EnvelopeCase now = Optional.ofNullable(found.get(envelope)).orElseThrow();
            if (now.version() != seen) {
                throw new OptimisticLockingFailureException("The case " + envelope + " was changed since you saw it.");
            }
            Refusal.when(
                            now.state() != move.kind().from(),
                            Why.NOT_IN_THIS_STATE,
                            envelope + " is " + now.state().spoken() + ".")
                    .ifPresent(refusals::add);
        });
        return refusals.stream().findFirst();
    }

    private List<AgendaItem> items(MoveMotion move) {
        return agenda.find(move.session(), move.envelopes().keySet()).values().stream()
                .sorted(Comparator.comparing(AgendaItem::envelopeNo))
                .toList();
    }
}
