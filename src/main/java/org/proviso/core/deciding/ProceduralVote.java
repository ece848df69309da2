package org.proviso.core.deciding;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.rules.ResolvedPack;

/**
 * The vote on a motion that says nothing of how an envelope is settled: to table it, or to open a decided one again. It
 * needs a majority of the votes cast in each body that votes; a tie does not carry it (common practice). What the pack
 * says of ties and failed motions is about decisions, and its gate too; its quorum is about every vote.
 */
public final class ProceduralVote {

    private ProceduralVote() {}

    /** Reads the vote; {@code asks} is what was moved, in words: {@code table}. */
    public static VoteResult voteResult(
            String asks, Set<EnvelopeNumber> envelopes, List<BodyVote> polls, ResolvedPack pack) {
        if (envelopes.isEmpty()) {
            return new VoteResult.Refused(Refusal.of(Why.NOTHING_PUT, "This motion has no envelopes left."));
        }
        Optional<Refusal> refusal = polls.stream()
                .flatMap(poll -> new BodyVoteChecks(poll, envelopes, VotingRules.of(pack)).first().stream())
                .findFirst();
        return refusal.<VoteResult>map(VoteResult.Refused::new).orElseGet(() -> read(asks, envelopes, polls));
    }

    private static VoteResult read(String asks, Set<EnvelopeNumber> envelopes, List<BodyVote> polls) {
        MotionResult end = MotionResult.over(polls.stream()
                .map(poll -> poll.tally()
                        .result(VoteNeeded.MAJORITY_OF_VOTES_CAST, poll.body().members()))
                .toList());
        String words = VoteMeaning.sentence(asks, end, polls, VoteNeeded.MAJORITY_OF_VOTES_CAST) + ".";
        return new VoteResult.Stands(end, null, envelopes, Set.of(), words, List.of());
    }
}
