package org.proviso.board;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.proviso.core.deciding.DecidedAs;
import org.proviso.core.deciding.DeciderKind;
import org.proviso.core.deciding.MotionResult;
import org.proviso.core.deciding.Refusal;
import org.proviso.core.deciding.VoteResult;
import org.proviso.review.CaseKey;
import org.proviso.review.DecidedBy;
import org.proviso.review.DecisionService;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.Outcome;
import org.proviso.review.Settled;
import org.proviso.review.Settlement;
import org.springframework.stereotype.Component;

/** Lets a vote take effect on its cases, by the one door there is to them: on all of them, or on none. */
@Component
class Effect {

    private final DecisionService decisions;
    private final Proposals proposals;

    Effect(DecisionService decisions, Proposals proposals) {
        this.decisions = decisions;
        this.proposals = proposals;
    }

    /** The cases a vote changed, as they are now, or what forbids it; both empty where it settles nothing. */
    record Took(List<EnvelopeCase> now, Map<CaseKey, List<Refusal>> refusals) {}

    Took of(VoteClosing.Ballot ballot, Optional<BoardMotion> twin, VoteResult.Result result, Set<String> voters) {
        if (ballot.motion().kind() == MotionKind.REOPEN && result.end() == MotionResult.CARRIED) {
            return reopened(ballot.motion());
        }
        return result.staysOpen() ? new Took(List.of(), Map.of()) : settled(ballot, twin, result, voters);
    }

    private Took reopened(BoardMotion motion) {
        MotionEnvelope one = motion.put().get(0);
        CaseKey key = motion.key().session().caseOf(one.envelopeNo());
        Outcome outcome = decisions.reopen(key, one.caseVersion(), motion.because());
        return outcome instanceof Outcome.Accepted accepted
                ? new Took(List.of(accepted.now()), Map.of())
                : new Took(List.of(), Map.of(key, ((Outcome.Refused) outcome).why()));
    }

    private Took settled(
            VoteClosing.Ballot ballot, Optional<BoardMotion> twin, VoteResult.Result result, Set<String> voters) {
        GroundsOfVote grounds = new GroundsOfVote(ballot.motion(), twin, result);
        DecidedAs as = Objects.requireNonNull(result.decided(), "a vote that settles says how");
        Set<String> contests = as == DecidedAs.COUNT_IN_PART ? ballot.motion().contests() : Set.of();
        List<Settlement> settlements = ballot.motion().put().stream()
                .map(one -> {
                    CaseKey key = ballot.session().key().caseOf(one.envelopeNo());
                    Proposed proposed = proposals.find(key).orElse(null);
                    return new Settlement(key, one.caseVersion(), as, grounds.of(proposed), contests);
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
        Settled settled = decisions.settle(settlements, by);
        return settled instanceof Settled.All all
                ? new Took(all.now(), Map.of())
                : new Took(List.of(), ((Settled.None) settled).refusals());
    }
}
