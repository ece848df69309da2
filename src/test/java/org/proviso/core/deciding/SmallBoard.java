package org.proviso.core.deciding;

import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.proviso.core.Code;
import org.proviso.core.Election.DecidingBody;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;
import org.proviso.core.act.Refusal;
import org.proviso.core.rules.ChangedPack;
import org.proviso.core.rules.RuleValue;
import org.proviso.core.rules.Rules;

/** A board of three with a quorum of two that votes on envelopes 1 and 2, after the gate has opened. */
final class SmallBoard {

    static final LocalDateTime OPEN = LocalDateTime.of(2026, 11, 12, 10, 0);

    ChangedPack pack = ChangedPack.of("example");
    DecidingBody body = new DecidingBody(3, 2);
    LocalDateTime at = OPEN;
    Motion motion = motion(DecisionOutcome.REJECT, Set.of());
    final Set<UserName> present =
            new LinkedHashSet<>(List.of(new UserName("ana"), new UserName("ben"), new UserName("cal")));
    final Map<UserName, Set<EnvelopeNumber>> recusals = new LinkedHashMap<>();
    Set<EnvelopeNumber> knownToHaveVoted = Set.of();

    static Motion motion(DecisionOutcome asks, Set<EnvelopeNumber> pulledOut) {
        return new Motion(
                asks, new LinkedHashSet<>(List.of(new EnvelopeNumber("1"), new EnvelopeNumber("2"))), pulledOut, null);
    }

    SmallBoard asks(String outcome) {
        motion = motion(Code.find(DecisionOutcome.class, outcome).orElseThrow(), Set.of());
        return this;
    }

    /** Who decides, the vote needed to reject, what a tie and what a failed motion means. */
    SmallBoard rules(String kind, String toReject, String tie, String failed) {
        pack.word(Rules.DECIDER, kind)
                .word(Rules.VOTE_TO_REJECT, toReject)
                .word(Rules.TIE_MEANS, tie)
                .word(Rules.FAILED_MOTION_MEANS, failed)
                .with(Rules.GATE_DECISION, new RuleValue.NoDeadline());
        return this;
    }

    SmallBoard official() {
        body = new DecidingBody(1, 1);
        present.retainAll(Set.of(new UserName("ana")));
        return this;
    }

    /** Votes as {@code yes no abstains}, of ana, ben and cal in this order, {@code -} for none; one text a body. */
    VoteResult votes(String... bodies) {
        List<BodyVote> polls = Stream.of(bodies).map(this::poll).toList();
        return VoteMeaning.voteResult(motion, polls, pack.book(), at, knownToHaveVoted);
    }

    /** {@code carried: reject}, {@code tied: stays open} or the code of the refusal. */
    String comesTo(String... bodies) {
        VoteResult result = votes(bodies);
        if (result instanceof VoteResult.Refused refused) {
            return refused.refusal().why().code();
        }
        VoteResult.Stands stands = (VoteResult.Stands) result;
        String decided = stands.staysOpen() ? "stays open" : stands.decided().words();
        return stands.end().code() + ": " + decided;
    }

    Refusal refusal(String... bodies) {
        return ((VoteResult.Refused) votes(bodies)).refusal();
    }

    private BodyVote poll(String votes) {
        return new BodyVote(body, present, recusals, cast(votes));
    }

    static Map<UserName, Vote> cast(String votes) {
        Map<UserName, Vote> cast = new LinkedHashMap<>();
        List<String> members = List.of("ana", "ben", "cal");
        String[] words = votes.split(" ");
        for (int i = 0; i < words.length; i++) {
            String member = members.get(i);
            Code.find(Vote.class, words[i]).ifPresent(vote -> cast.put(new UserName(member), vote));
        }
        return cast;
    }
}
