package org.proviso.board.motion;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.proviso.board.BoardMotion;
import org.proviso.board.MemberStore;
import org.proviso.board.MotionKey;
import org.proviso.board.SessionKey;
import org.proviso.core.Election.DecidingBody;
import org.proviso.core.UserName;
import org.proviso.core.deciding.BodyVote;
import org.proviso.core.deciding.Vote;
import org.springframework.stereotype.Component;

/** The vote of a body on a motion as the rules read it. */
@Component
class BodyVotes {

    private final MemberStore members;
    private final VoteStore votes;

    BodyVotes(MemberStore members, VoteStore votes) {
        this.members = members;
        this.votes = votes;
    }

    /** As it is now: who is there, who is recused, who voted how. */
    BodyVote openVote(BoardMotion motion, DecidingBody seats) {
        SessionKey session = motion.key().session();
        return new BodyVote(seats, members.present(session), members.recused(session), byMember(motion.key()));
    }

    /** As it was when it closed: everyone who was there has a vote on record, be it as recused. */
    BodyVote closedVote(MotionKey key, DecidingBody seats) {
        Map<UserName, Vote> cast = byMember(key);
        return new BodyVote(seats, cast.keySet(), Map.of(), cast);
    }

    /** Members who are there and are recused, and have no vote on record that says so. */
    Set<UserName> silentlyRecused(BoardMotion motion, BodyVote poll) {
        Set<UserName> silent = new LinkedHashSet<>(poll.present());
        silent.removeAll(poll.votes().keySet());
        silent.removeIf(member ->
                poll.recusals().getOrDefault(member, Set.of()).stream().noneMatch(motion.putNos()::contains));
        return silent;
    }

    /** Everyone who voted yes or no. */
    static Set<UserName> deciding(List<BodyVote> polls) {
        Set<UserName> deciding = new LinkedHashSet<>();
        polls.forEach(poll -> poll.votes().forEach((member, vote) -> {
            if (vote == Vote.YES || vote == Vote.NO) {
                deciding.add(member);
            }
        }));
        return deciding;
    }

    private Map<UserName, Vote> byMember(MotionKey key) {
        Map<UserName, Vote> cast = new LinkedHashMap<>();
        votes.all(key).forEach(vote -> cast.put(vote.userName(), vote.vote()));
        return cast;
    }
}
