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
import org.proviso.board.Body;
import org.proviso.board.ElectionNow;
import org.proviso.board.MotionKey;
import org.proviso.board.MotionStore;
import org.proviso.board.Proposals;
import org.proviso.board.SessionStore;
import org.proviso.core.deciding.Acts;
import org.proviso.core.deciding.DecidedAs;
import org.proviso.core.deciding.DecisionChecks;
import org.proviso.core.deciding.Poll;
import org.proviso.core.deciding.ProcedureVote;
import org.proviso.core.deciding.Refusal;
import org.proviso.core.deciding.VoteMeaning;
import org.proviso.core.deciding.VoteResult;
import org.proviso.review.CaseKey;
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
    private final Polls polls;
    private final Proposals proposals;
    private final Effect effect;
    private final VoteRecord record;
    private final BoardClock clock;

    VoteClosing(
            SessionStore sessions,
            MotionStore motions,
            MotionChecks checks,
            Polls polls,
            Proposals proposals,
            Effect effect,
            VoteRecord record,
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

    VoteClosed close(OfficeUser by, MotionKey key, int version) {
        String electionId = key.session().electionId();
        sessions.lockAll(electionId);
        BoardSession session = sessions.lock(key.session());
        BoardMotion motion = motions.find(key)
                .orElseThrow(() -> new IllegalArgumentException("There is no motion " + key.subject() + "."))
                .at(version);
        Optional<Refusal> refusal = checks.sitting(session, by.userName()).or(() -> MotionChecks.put(motion));
        if (refusal.isPresent()) {
            return VoteClosed.Refused.because(refusal.get());
        }
        ElectionNow election = clock.in(electionId);
        Poll poll = polls.now(motion, session.body().seats(election.election()));
        Ballot ballot = new Ballot(session, motion, poll, election, by);
        return session.body().isOneOfTwo() && motion.kind().takesBothBodies()
                ? inOneOfTwo(ballot)
                : finished(ballot, Optional.empty(), List.of(poll));
    }

    /** The vote of one of two bodies waits, or is read with the other's. */
    private VoteClosed inOneOfTwo(Ballot ballot) {
        VoteResult alone = ballot.alone();
        if (alone instanceof VoteResult.Refused refused) {
            return VoteClosed.Refused.because(refused.refusal());
        }
        Optional<BoardMotion> twin = twin(ballot);
        if (twin.isPresent()) {
            Poll others = polls.closed(
                    twin.get().key(),
                    ballot.session().body().seats(ballot.election().election()));
            List<Poll> both = ballot.session().body() == Body.FIRST
                    ? List.of(ballot.poll(), others)
                    : List.of(others, ballot.poll());
            return finished(ballot, twin, both);
        }
        Map<CaseKey, List<Refusal>> ownActs = ownActs(ballot);
        return ownActs.isEmpty()
                ? new VoteClosed.WaitsForOtherBody(record.write(ballot, (VoteResult.Result) alone, Optional.empty()))
                : new VoteClosed.Refused(List.of(), ownActs);
    }

    /** The other body's newest vote that touches any of these envelopes, if it was on just the same. */
    private Optional<BoardMotion> twin(Ballot ballot) {
        BoardSession session = ballot.session();
        return motions.waiting(session.key().electionId(), session.body().other()).stream()
                .filter(ballot.motion()::touches)
                .findFirst()
                .filter(ballot.motion()::isTheSameAs);
    }

    /** Seen before the other body votes too, not only when the decision is due. */
    private Map<CaseKey, List<Refusal>> ownActs(Ballot ballot) {
        Map<CaseKey, List<Refusal>> refusals = new LinkedHashMap<>();
        DecidedAs asks = ballot.motion().kind().asks().orElse(DecidedAs.COUNT);
        for (String envelope : ballot.motion().putNos()) {
            CaseKey key = ballot.session().key().caseOf(envelope);
            Acts acts = proposals
                    .find(key)
                    .map(proposed -> new Acts(
                            proposed.proposedBy(), proposed.secondReadBy(), Polls.deciding(List.of(ballot.poll()))))
                    .orElse(new Acts(null, null, Set.of()));
            DecisionChecks.ownActs(asks, acts).ifPresent(refusal -> refusals.put(key, List.of(refusal)));
        }
        return refusals;
    }

    private VoteClosed finished(Ballot ballot, Optional<BoardMotion> twin, List<Poll> both) {
        VoteResult read = ballot.read(both);
        if (read instanceof VoteResult.Refused refused) {
            return VoteClosed.Refused.because(refused.refusal());
        }
        VoteResult.Result result = (VoteResult.Result) read;
        Effect.Took took = effect.of(ballot, twin, result, Polls.deciding(both));
        if (!took.refusals().isEmpty()) {
            return new VoteClosed.Refused(List.of(), took.refusals());
        }
        BoardMotion written = record.write(ballot, result, twin);
        return took.now().isEmpty() ? new VoteClosed.StaysOpen(written) : new VoteClosed.Settled(written, took.now());
    }

    /** A motion as it is being closed: who voted how, under which rules, closed by whom. */
    record Ballot(BoardSession session, BoardMotion motion, Poll poll, ElectionNow election, OfficeUser by) {

        VoteResult alone() {
            return motion.kind()
                    .asks()
                    .map(asks -> VoteMeaning.ofOneOfTwo(motion.asking(asks), poll, election.book(), election.at()))
                    .orElseGet(() -> procedure(List.of(poll)));
        }

        VoteResult read(List<Poll> bodies) {
            return motion.kind()
                    .asks()
                    .map(asks -> VoteMeaning.of(motion.asking(asks), bodies, election.book(), election.at()))
                    .orElseGet(() -> procedure(bodies));
        }

        private VoteResult procedure(List<Poll> bodies) {
            return ProcedureVote.of(motion.kind().words(), Set.copyOf(motion.putNos()), bodies);
        }
    }
}
