package org.proviso.core.deciding;

import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.rules.StateRules;

/**
 * Whether one body's vote stands: who voted may vote, enough of them take part, and each of them is recorded. A recused
 * member does not count toward the quorum unless the rules say so ({@link VotingRules}).
 */
record BodyVoteChecks(BodyVote poll, Set<EnvelopeNumber> put, VotingRules rules) {

    Optional<Refusal> first() {
        return tooMany()
                .or(this::strangers)
                .or(this::recusedVoted)
                .or(this::quorumNotSettled)
                .or(this::noQuorum)
                .or(this::voteMissing)
                .or(this::silent);
    }

    private Optional<Refusal> tooMany() {
        int present = poll.present().size();
        int members = poll.body().members();
        return refuse(
                present > members,
                Why.MORE_PRESENT_THAN_MEMBERS,
                present + " members are marked present, but the body has only " + members + ".");
    }

    private Optional<Refusal> strangers() {
        Set<UserName> strangers = without(poll.votes().keySet(), poll.present());
        return refuse(strangers, Why.NOT_PRESENT, "Not present, but a vote is recorded: {who}.");
    }

    private Optional<Refusal> recusedVoted() {
        Set<UserName> voted = poll.recused(put);
        voted.removeIf(member -> poll.votes().getOrDefault(member, Vote.RECUSED) == Vote.RECUSED);
        return refuse(
                voted,
                Why.RECUSED_MEMBER_VOTED,
                "Recused, but a vote is recorded: {who}. Remove the envelope from the motion, or withdraw the vote.");
    }

    /** What no source settles matters only while somebody is recused. */
    private Optional<Refusal> quorumNotSettled() {
        return poll.recused(put).isEmpty() ? Optional.empty() : rules.unsettled(StateRules.QUORUM_COUNTS_RECUSED);
    }

    private Optional<Refusal> noQuorum() {
        int there = rules.quorumOf(poll, put);
        int quorum = poll.body().quorum();
        String how = rules.quorumCountsRecused() ? " present, " : " taking part, ";
        return refuse(there < quorum, Why.NO_QUORUM, "No quorum: " + there + how + quorum + " needed.");
    }

    private Optional<Refusal> voteMissing() {
        Set<UserName> missing = without(poll.taking(put), poll.votes().keySet());
        return refuse(missing, Why.VOTE_MISSING, "No vote is recorded for {who}.");
    }

    /** Nothing is decided about a vote by silence, whatever the pack makes of a tie. */
    private Optional<Refusal> silent() {
        return refuse(poll.tally().isSilent(), Why.NOBODY_VOTED, "No one voted for or against.");
    }

    private static Optional<Refusal> refuse(boolean wrong, Why why, String words) {
        return wrong ? Optional.of(Refusal.of(why, words)) : Optional.empty();
    }

    private static Optional<Refusal> refuse(Set<UserName> who, Why why, String words) {
        return who.isEmpty() ? Optional.empty() : Optional.of(Refusal.naming(why, who, words));
    }

    private static Set<UserName> without(Set<UserName> all, Set<UserName> some) {
        Set<UserName> left = new LinkedHashSet<>(all);
        left.removeAll(some);
        return left;
    }
}
