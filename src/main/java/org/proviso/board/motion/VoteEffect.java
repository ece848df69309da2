package org.proviso.board.motion;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.proviso.board.BoardMotion;
import org.proviso.board.MotionEnvelope;
import org.proviso.board.MotionKey;
import org.proviso.board.MotionKind;
import org.proviso.board.ProposalForDecision;
import org.proviso.board.ProposalsForDecision;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;
import org.proviso.core.act.ActResult;
import org.proviso.core.deciding.BodyVote;
import org.proviso.core.deciding.DeciderKind;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.core.deciding.MotionResult;
import org.proviso.core.deciding.VoteResult;
import org.proviso.review.DecidedBy;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.Settlement;
import org.proviso.review.decide.ContradictedDecisions;
import org.proviso.review.decide.DecidedCaseService;
import org.proviso.review.decide.DecisionService;
import org.springframework.stereotype.Component;

/** Lets a vote take effect on its cases, by the one door there is to them: on all of them, or on none. */
@Component
class VoteEffect {

    private final DecisionService decisions;
    private final DecidedCaseService decided;
    private final ContradictedDecisions contradicted;
    private final ProposalsForDecision proposals;

    VoteEffect(
            DecisionService decisions,
            DecidedCaseService decided,
            ContradictedDecisions contradicted,
            ProposalsForDecision proposals) {
        this.contradicted = contradicted;
        this.decisions = decisions;
        this.decided = decided;
        this.proposals = proposals;
    }

    /** What a vote comes to; one that did not carry counts nobody who is known to have voted. */
    VoteResult read(VoteClosing.ClosingMotion ballot, List<BodyVote> bodies) {
        VoteResult read = ballot.read(bodies, Set.of());
        return read instanceof VoteResult.Stands stands && stands.end() != MotionResult.CARRIED && !stands.staysOpen()
                ? ballot.read(bodies, decisions.knownToHaveVoted(cases(ballot)))
                : read;
    }

    private static List<EnvelopeKey> cases(VoteClosing.ClosingMotion ballot) {
        return ballot.motion().putNos().stream()
                .map(ballot.session().key()::caseOf)
                .toList();
    }

    /** The cases a vote changed, as they are now, none where it settles nothing; or what forbids it in which case. */
    ActResult<List<EnvelopeCase>> apply(
            VoteClosing.ClosingMotion ballot,
            Optional<BoardMotion> twin,
            VoteResult.Stands result,
            Set<UserName> voters) {
        if (ballot.motion().kind() == MotionKind.REOPEN && result.end() == MotionResult.CARRIED) {
            return reopened(ballot.motion());
        }
        if (ballot.motion().kind() == MotionKind.LET_STAND && result.end() == MotionResult.CARRIED) {
            return letStand(ballot);
        }
        return result.staysOpen() ? ActResult.accepted(List.of()) : settled(ballot, twin, result, voters);
    }

    private ActResult<List<EnvelopeCase>> reopened(BoardMotion motion) {
        MotionEnvelope motionEnvelope = motion.put().get(0);
        EnvelopeKey key = motion.key().session().caseOf(motionEnvelope.envelopeNo());
        return about(motionEnvelope, decided.reopen(key, motionEnvelope.caseVersion(), motion.because()));
    }

    private ActResult<List<EnvelopeCase>> letStand(VoteClosing.ClosingMotion ballot) {
        MotionKey motion = ballot.motion().key();
        MotionEnvelope motionEnvelope = ballot.motion().put().get(0);
        return about(
                motionEnvelope,
                contradicted.letStand(
                        motion.session().caseOf(motionEnvelope.envelopeNo()),
                        motionEnvelope.caseVersion(),
                        ballot.motion().because(),
                        ballot.by(),
                        motion.session().sessionNo(),
                        motion.motionNo()));
    }

    private static ActResult<List<EnvelopeCase>> about(MotionEnvelope envelope, ActResult<EnvelopeCase> done) {
        return done.isRefused()
                ? new ActResult.Refused<>(done.refusals().stream()
                        .map(refusal -> refusal.about(envelope.envelopeNo()))
                        .toList())
                : done.map(List::of);
    }

    private ActResult<List<EnvelopeCase>> settled(
            VoteClosing.ClosingMotion ballot,
            Optional<BoardMotion> twin,
            VoteResult.Stands result,
            Set<UserName> voters) {
        VoteGrounds grounds = new VoteGrounds(ballot.motion(), twin, result);
        DecisionOutcome as = Objects.requireNonNull(result.decided(), "a vote that settles says how");
        Set<String> contests =
                as == DecisionOutcome.COUNT_IN_PART ? ballot.motion().contests() : Set.of();
        Map<EnvelopeNumber, ProposalForDecision> proposed = proposals.find(
                ballot.session().key().electionId(), ballot.motion().putNos());
        List<Settlement> settlements = ballot.motion().put().stream()
                .filter(motionEnvelope -> result.envelopes().contains(motionEnvelope.envelopeNo()))
                .map(motionEnvelope -> {
                    EnvelopeKey key = ballot.session().key().caseOf(motionEnvelope.envelopeNo());
                    return new Settlement(
                            key,
                            motionEnvelope.caseVersion(),
                            as,
                            grounds.groundsFor(proposed.get(motionEnvelope.envelopeNo())),
                            contests);
                })
                .toList();
        MotionKey key = ballot.motion().key();
        DeciderKind kind = ballot.election().decider().orElseThrow();
        DecidedBy by = new DecidedBy(
                kind,
                key.session().sessionNo(),
                key.motionNo(),
                voters,
                ballot.by().actor());
        return decisions.settle(settlements, by);
    }
}
