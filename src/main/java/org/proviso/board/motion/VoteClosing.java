package org.proviso.board.motion;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.proviso.access.ActDoor;
import org.proviso.access.OfficeUser;
import org.proviso.access.Permission;
import org.proviso.board.BoardClock;
import org.proviso.board.BoardMotion;
import org.proviso.board.BoardSession;
import org.proviso.board.BodyKind;
import org.proviso.board.ElectionAsOf;
import org.proviso.board.MotionKey;
import org.proviso.board.MotionStore;
import org.proviso.board.ProposalForDecision;
import org.proviso.board.ProposalsForDecision;
import org.proviso.board.SessionStore;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.core.deciding.BodyVote;
import org.proviso.core.deciding.DecisionChecks;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.core.deciding.DecisionParticipants;
import org.proviso.core.deciding.ProceduralVote;
import org.proviso.core.deciding.VoteMeaning;
import org.proviso.core.deciding.VoteResult;
import org.springframework.stereotype.Component;

/**
 * Closes a vote. All sessions of the election are held meanwhile, so that of two bodies that close at the same moment
 * one sees the other's vote.
 */
@Component
class VoteClosing {

    private final SessionStore sessions;
    private final MotionStore motions;
    private final MotionChecks checks;
    private final BodyVotes polls;
    private final ProposalsForDecision proposals;
    private final VoteEffect effect;
    private final VoteResultWriter record;
    private final BoardClock clock;
    private final ActDoor door;

    VoteClosing(
            SessionStore sessions,
            MotionStore motions,
            MotionChecks checks,
            BodyVotes polls,
            ProposalsForDecision proposals,
            VoteEffect effect,
            VoteResultWriter record,
            BoardClock clock,
            ActDoor door) {
        this.sessions = sessions;
        this.motions = motions;
        this.checks = checks;
        this.polls = polls;
        this.proposals = proposals;
        this.effect = effect;
        this.record = record;
        this.clock = clock;
        this.door = door;
    }

    ActResult<VoteClosed> close(MotionKey key, int version) {
        ActDoor.Permitted member = door.demand(Permission.DECIDE);
        return member.lock(() -> held(member.user(), key, version))
                .refuse(held -> checks.sitting(held.session(), member.user().userName()))
                .refuse(held -> MotionChecks.put(held.motion()))
                .refuse(held -> checks.othersFirst(held.session(), held.motion().kind()))
                .saveOrRefuse(held -> closed(ballot(held)))
                .record(closed -> record.line(closed.vote()))
                .map(Closed::as);
    }

    /** The session and the motion in it, held, with whoever closes its vote. */
    private record HeldMotion(BoardSession session, BoardMotion motion, OfficeUser by) {}

    /** A vote as it was written, and what it came to. */
    private record Closed(VoteResultWriter.WrittenVote vote, VoteClosed as) {}

    private HeldMotion held(OfficeUser by, MotionKey key, int version) {
        sessions.lockAll(key.session().electionId());
        BoardSession session = sessions.lock(key.session());
        BoardMotion motion = motions.find(key)
                .orElseThrow(() -> new IllegalArgumentException("There is no motion " + key.subject() + "."))
                .at(version);
        return new HeldMotion(session, motion, by);
    }

    private ClosingMotion ballot(HeldMotion held) {
        BoardSession session = held.session();
        ElectionAsOf election = clock.electionAsOfNow(session.key().electionId());
        BodyVote poll = polls.openVote(held.motion(), session.body().seats(election.election()));
        return new ClosingMotion(session, held.motion(), poll, election, held.by());
    }

    private ActResult<Closed> closed(ClosingMotion ballot) {
        return ballot.session().body().isOneOfTwo() && ballot.motion().kind().takesBothBodies()
                ? inOneOfTwo(ballot)
                : finished(ballot, Optional.empty(), List.of(ballot.poll()));
    }

    /** The vote of one of two bodies waits, or is read with the other's. */
    private ActResult<Closed> inOneOfTwo(ClosingMotion ballot) {
        VoteResult alone = ballot.alone();
        if (alone instanceof VoteResult.Refused refused) {
            return ActResult.refused(refused.refusal());
        }
        Optional<BoardMotion> twin = twin(ballot);
        if (twin.isPresent()) {
            BodyVote others = polls.closedVote(
                    twin.get().key(),
                    ballot.session().body().seats(ballot.election().election()));
            List<BodyVote> both = ballot.session().body() == BodyKind.FIRST
                    ? List.of(ballot.poll(), others)
                    : List.of(others, ballot.poll());
            return finished(ballot, twin, both);
        }
        List<Refusal> ownActs = ownActs(ballot);
        if (!ownActs.isEmpty()) {
            return new ActResult.Refused<>(ownActs);
        }
        VoteResultWriter.WrittenVote written = record.write(ballot, (VoteResult.Stands) alone, Optional.empty());
        return ActResult.accepted(new Closed(written, new VoteClosed.WaitsForOtherBody(written.motion())));
    }

    /** The other body's newest vote that touches any of these envelopes, if it was on just the same. */
    private Optional<BoardMotion> twin(ClosingMotion ballot) {
        BoardSession session = ballot.session();
        return motions.waiting(session.key().electionId(), session.body().other()).stream()
                .filter(ballot.motion()::touches)
                .findFirst()
                .filter(ballot.motion()::isTheSameAs);
    }

    /** Seen before the other body votes too, not only when the decision is due. */
    private List<Refusal> ownActs(ClosingMotion ballot) {
        List<Refusal> refusals = new ArrayList<>();
        DecisionOutcome asks = ballot.motion().kind().asks().orElse(DecisionOutcome.COUNT);
        Map<EnvelopeNumber, ProposalForDecision> found = proposals.find(
                ballot.session().key().electionId(), ballot.motion().putNos());
        for (EnvelopeNumber envelope : ballot.motion().putNos()) {
            DecisionParticipants acts = Optional.ofNullable(found.get(envelope))
                    .map(proposed -> new DecisionParticipants(
                            proposed.proposedBy(), proposed.secondReadBy(), BodyVotes.deciding(List.of(ballot.poll()))))
                    .orElse(new DecisionParticipants(null, null, Set.of()));
            DecisionChecks.ownActs(asks, acts).ifPresent(refusal -> refusals.add(refusal.about(envelope)));
        }
        return refusals;
    }

    private ActResult<Closed> finished(ClosingMotion ballot, Optional<BoardMotion> twin, List<BodyVote> both) {
        VoteResult read = effect.read(ballot, both);
        if (read instanceof VoteResult.Refused refused) {
            return ActResult.refused(refused.refusal());
        }
        VoteResult.Stands result = (VoteResult.Stands) read;
        return effect.apply(ballot, twin, result, BodyVotes.deciding(both)).map(cases -> {
            VoteResultWriter.WrittenVote written = record.write(ballot, result, twin);
            return new Closed(
                    written,
                    cases.isEmpty()
                            ? new VoteClosed.StaysOpen(written.motion())
                            : new VoteClosed.Settled(written.motion(), cases));
        });
    }

    /** A motion as it is being closed: who voted how, under which rules, closed by whom. */
    record ClosingMotion(
            BoardSession session, BoardMotion motion, BodyVote poll, ElectionAsOf election, OfficeUser by) {

        VoteResult alone() {
            return motion.kind()
                    .asks()
                    .map(asks -> VoteMeaning.ofOneOfTwo(motion.asking(asks), poll, election.book(), election.at()))
                    .orElseGet(() -> procedure(List.of(poll)));
        }

        VoteResult read(List<BodyVote> bodies, Set<EnvelopeNumber> knownToHaveVoted) {
            return motion.kind()
                    .asks()
                    .map(asks -> VoteMeaning.voteResult(
                            motion.asking(asks), bodies, election.book(), election.at(), knownToHaveVoted))
                    .orElseGet(() -> procedure(bodies));
        }

        private VoteResult procedure(List<BodyVote> bodies) {
            return ProceduralVote.voteResult(
                    motion.kind().words(),
                    Set.copyOf(motion.putNos()),
                    bodies,
                    election.book().pack());
        }
    }
}
