package org.proviso.board.motion;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.proviso.access.OfficeUser;
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
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
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

    VoteClosing(
            SessionStore sessions,
            MotionStore motions,
            MotionChecks checks,
            BodyVotes polls,
            ProposalsForDecision proposals,
            VoteEffect effect,
            VoteResultWriter record,
            BoardClock clock) {
        this.sessions = sessions;
        this.motions = motions;
        this.checks = checks;
        this.polls = polls;
        this.proposals = proposals;
        this.effect = effect;
        this.record = record;
        this.clock = clock;
    }

    VoteClosingResult close(OfficeUser by, MotionKey key, int version) {
        ElectionId electionId = key.session().electionId();
        sessions.lockAll(electionId);
        BoardSession session = sessions.lock(key.session());
        BoardMotion motion = motions.find(key)
                .orElseThrow(() -> new IllegalArgumentException("There is no motion " + key.subject() + "."))
                .at(version);
        Optional<Refusal> refusal = checks.sitting(session, by.userName()).or(() -> MotionChecks.put(motion));
        if (refusal.isPresent()) {
            return VoteClosingResult.Refused.because(refusal.get());
        }
        ElectionAsOf election = clock.electionAsOfNow(electionId);
        BodyVote poll = polls.openVote(motion, session.body().seats(election.election()));
        ClosingMotion ballot = new ClosingMotion(session, motion, poll, election, by);
        return session.body().isOneOfTwo() && motion.kind().takesBothBodies()
                ? inOneOfTwo(ballot)
                : finished(ballot, Optional.empty(), List.of(poll));
    }

    /** The vote of one of two bodies waits, or is read with the other's. */
    private VoteClosingResult inOneOfTwo(ClosingMotion ballot) {
        VoteResult alone = ballot.alone();
        if (alone instanceof VoteResult.Refused refused) {
            return VoteClosingResult.Refused.because(refused.refusal());
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
        Map<EnvelopeKey, List<Refusal>> ownActs = ownActs(ballot);
        return ownActs.isEmpty()
                ? new VoteClosingResult.WaitsForOtherBody(
                        record.write(ballot, (VoteResult.Stands) alone, Optional.empty()))
                : new VoteClosingResult.Refused(List.of(), ownActs);
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
    private Map<EnvelopeKey, List<Refusal>> ownActs(ClosingMotion ballot) {
        Map<EnvelopeKey, List<Refusal>> refusals = new LinkedHashMap<>();
        DecisionOutcome asks = ballot.motion().kind().asks().orElse(DecisionOutcome.COUNT);
        Map<EnvelopeNumber, ProposalForDecision> found = proposals.find(
                ballot.session().key().electionId(), ballot.motion().putNos());
        for (EnvelopeNumber envelope : ballot.motion().putNos()) {
            EnvelopeKey key = ballot.session().key().caseOf(envelope);
            DecisionParticipants acts = Optional.ofNullable(found.get(envelope))
                    .map(proposed -> new DecisionParticipants(
                            proposed.proposedBy(), proposed.secondReadBy(), BodyVotes.deciding(List.of(ballot.poll()))))
                    .orElse(new DecisionParticipants(null, null, Set.of()));
            DecisionChecks.ownActs(asks, acts).ifPresent(refusal -> refusals.put(key, List.of(refusal)));
        }
        return refusals;
    }

    private VoteClosingResult finished(ClosingMotion ballot, Optional<BoardMotion> twin, List<BodyVote> both) {
        VoteResult read = ballot.read(both);
        if (read instanceof VoteResult.Refused refused) {
            return VoteClosingResult.Refused.because(refused.refusal());
        }
        VoteResult.Stands result = (VoteResult.Stands) read;
        VoteEffect.Applied took = effect.apply(ballot, twin, result, BodyVotes.deciding(both));
        if (!took.refusals().isEmpty()) {
            return new VoteClosingResult.Refused(List.of(), took.refusals());
        }
        BoardMotion written = record.write(ballot, result, twin);
        return took.now().isEmpty()
                ? new VoteClosingResult.StaysOpen(written)
                : new VoteClosingResult.Settled(written, took.now());
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

        VoteResult read(List<BodyVote> bodies) {
            return motion.kind()
                    .asks()
                    .map(asks -> VoteMeaning.voteResult(motion.asking(asks), bodies, election.book(), election.at()))
                    .orElseGet(() -> procedure(bodies));
        }

        private VoteResult procedure(List<BodyVote> bodies) {
            return ProceduralVote.voteResult(motion.kind().words(), Set.copyOf(motion.putNos()), bodies);
        }
    }
}
