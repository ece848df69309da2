package org.proviso.core.deciding;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.proviso.core.Code;
import org.proviso.core.Election.DecidingBody;
import org.proviso.core.UserName;
import org.proviso.core.rules.DeadlineBook;

/** What holds for every vote under every set of rules. */
class VotePropertyTest {

    /** Reading a pack takes longer than a vote: one book for each set of rules. */
    private static final Map<String, DeadlineBook> BOOKS = new HashMap<>();

    @Property
    void rejects_nobody_against_a_vote_where_a_rejection_must_be_unanimous(
            @ForAll("asks") String asks,
            @ForAll("ties") String tie,
            @ForAll("fails") String failed,
            @ForAll("votes") List<String> votes) {
        String forCounting = asks.equals("reject") ? "no" : "yes";
        board(asks, "board", "unanimous", tie, failed, votes).ifPresent(result -> {
            if (result.decided() == DecisionOutcome.REJECT) {
                assertThat(votes).doesNotContain(forCounting);
            }
        });
    }

    @Property
    void rejects_nobody_against_more_votes_than_for_it(
            @ForAll("asks") String asks,
            @ForAll("ties") String tie,
            @ForAll("fails") String failed,
            @ForAll("votes") List<String> votes) {
        long yes = votes.stream().filter("yes"::equals).count();
        long no = votes.stream().filter("no"::equals).count();
        board(asks, "board", "majority", tie, failed, votes).ifPresent(result -> {
            if (result.decided() == DecisionOutcome.REJECT) {
                assertThat(asks.equals("reject") ? yes : no).isGreaterThanOrEqualTo(asks.equals("reject") ? no : yes);
            }
        });
    }

    @Property
    void does_not_look_at_who_cast_which_vote(
            @ForAll("asks") String asks,
            @ForAll("ties") String tie,
            @ForAll("fails") String failed,
            @ForAll("votes") List<String> votes) {
        List<String> turned = List.of(votes.get(2), votes.get(0), votes.get(1));
        assertThat(board(asks, "board", "majority", tie, failed, turned).map(VoteResult.Stands::decided))
                .isEqualTo(board(asks, "board", "majority", tie, failed, votes).map(VoteResult.Stands::decided));
    }

    /** Silence is refused; so what stands has a vote for or against in it. */
    @Property
    void decides_nothing_without_a_vote_cast(
            @ForAll("asks") String asks, @ForAll("ties") String tie, @ForAll("votes") List<String> votes) {
        boolean cast = votes.contains("yes") || votes.contains("no");
        assertThat(cast || board(asks, "board", "majority", tie, "count", votes).isEmpty())
                .isTrue();
    }

    @Provide
    Arbitrary<String> asks() {
        return Arbitraries.of("count", "count_in_part", "reject");
    }

    @Provide
    Arbitrary<String> ties() {
        return Arbitraries.of("count", "reject", "stays_open", "none");
    }

    @Provide
    Arbitrary<String> fails() {
        return Arbitraries.of("count", "reject", "stays_open");
    }

    @Provide
    Arbitrary<List<String>> votes() {
        return Arbitraries.of("yes", "no", "abstains", "recused").list().ofSize(3);
    }

    private static Optional<VoteResult.Stands> board(
            String asks, String kind, String toReject, String tie, String failed, List<String> votes) {
        DeadlineBook book = BOOKS.computeIfAbsent(
                String.join(" ", kind, toReject, tie, failed),
                key -> new SmallBoard().rules(kind, toReject, tie, failed).pack.book());
        DecisionOutcome outcome = Code.find(DecisionOutcome.class, asks).orElseThrow();
        BodyVote poll = new BodyVote(
                new DecidingBody(3, 2),
                Set.of(new UserName("ana"), new UserName("ben"), new UserName("cal")),
                Map.of(),
                SmallBoard.cast(String.join(" ", votes)));
        VoteResult result =
                VoteMeaning.voteResult(SmallBoard.motion(outcome, Set.of()), List.of(poll), book, SmallBoard.OPEN);
        return result instanceof VoteResult.Stands stands ? Optional.of(stands) : Optional.empty();
    }
}
