package org.proviso.board.motion;

import java.util.ArrayList;
import java.util.LinkedHashMap;
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
import org.proviso.core.act.Refusal;
import org.proviso.core.deciding.DeciderKind;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.core.deciding.MotionResult;
import org.proviso.core.deciding.VoteResult;
import org.proviso.review.DecidedBy;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.Settlement;
import org.proviso.review.decide.DecidedCaseService;
import org.proviso.review.decide.DecisionService;
import org.springframework.stereotype.Component;

/** Lets a vote take effect on its cases, by the one door there is to them: on all of them, or on none. */
@Component
class VoteEffect {

    private final DecisionService decisions;
    private final DecidedCaseService decided;
    private final ProposalsForDecision proposals;

    VoteEffect(DecisionService decisions, DecidedCaseService decided, ProposalsForDecision proposals) {
        this.decisions = decisions;
        this.decided = decided;
        this.proposals = proposals;
    }

    /** The cases a vote changed, as they are now, or what forbids it; both empty where it settles nothing. */
    record Applied(List<EnvelopeCase> now, Map<EnvelopeKey, List<Refusal>> refusals) {}

    Applied apply(
            VoteClosing.ClosingMotion ballot,
            Optional<BoardMotion> twin,
            VoteResult.Stands result,
            Set<UserName> voters) {
        if (ballot.motion().kind() == MotionKind.REOPEN && result.end() == MotionResult.CARRIED) {
            return reopened(ballot.motion());
        }
        return result.staysOpen() ? new Applied(List.of(), Map.of()) : settled(ballot, twin, result, voters);
    }

    private Applied reopened(BoardMotion motion) {
        MotionEnvelope one = motion.put().get(0);
        EnvelopeKey key = motion.key().session().caseOf(one.envelopeNo());
        ActResult<EnvelopeCase> outcome = decided.reopen(key, one.caseVersion(), motion.because());
        return outcome.ifAccepted()
                .map(now -> new Applied(List.of(now), Map.of()))
                .orElseGet(() -> new Applied(List.of(), Map.of(key, outcome.refusals())));
    }

    private Applied settled(
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
                .map(one -> {
                    EnvelopeKey key = ballot.session().key().caseOf(one.envelopeNo());
                    return new Settlement(
                            key, one.caseVersion(), as, grounds.groundsFor(proposed.get(one.envelopeNo())), contests);
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
        ActResult<List<EnvelopeCase>> settled = decisions.settle(settlements, by);
        Map<EnvelopeKey, List<Refusal>> refusals = new LinkedHashMap<>();
        settled.refusals()
                .forEach(refusal -> refusals.computeIfAbsent(
                                key.session()
                                        .caseOf(Objects.requireNonNullElse(
                                                refusal.about(),
                                                settlements.get(0).key().envelopeNo())),
                                any -> new ArrayList<>())
                        .add(refusal));
        return new Applied(settled.ifAccepted().orElse(List.of()), refusals);
    }
}
