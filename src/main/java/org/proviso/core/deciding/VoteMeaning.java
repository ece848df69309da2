package org.proviso.core.deciding;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.rules.DeadlineBook;
import org.proviso.core.rules.InformationRules;
import org.proviso.core.rules.ResolvedPack;
import org.proviso.core.rules.ResolvedRule;
import org.proviso.core.rules.Rule;
import org.proviso.core.rules.Rules;

/**
 * What a vote means under the rules of the election. What vote a rejection needs and what vote counting, in full or in
 * part, is for {@link VotingRules} to say; what a tied or a failed motion means is the pack's. Whether the outcome is legal for each case is {@link DecisionChecks}' to say.
 */
public final class VoteMeaning {

    private final Motion motion;
    private final List<BodyVote> polls;
    private final ResolvedPack pack;
    private final VotingRules rules;
    private final Set<EnvelopeNumber> voted;
    private final List<ResolvedRule> restsOn = new ArrayList<>();

    private VoteMeaning(Motion motion, List<BodyVote> polls, ResolvedPack pack, Set<EnvelopeNumber> voted) {
        this.motion = motion;
        this.polls = polls;
        this.pack = pack;
        this.rules = VotingRules.of(pack);
        this.voted = voted;
    }

    /** Reads a vote, one poll for each body, taken at that moment (local to the county). */
    public static VoteResult voteResult(Motion motion, List<BodyVote> polls, DeadlineBook book, LocalDateTime at) {
        return voteResult(motion, polls, book, at, Set.of());
    }

    /**
     * The same where the voters of some envelopes are known to have voted ({@link DecisionChecks#isKnownToHaveVoted}). No
     * tie and no failed motion counts those: they stay open until a motion to count carries (common practice).
     */
    public static VoteResult voteResult(
            Motion motion,
            List<BodyVote> polls,
            DeadlineBook book,
            LocalDateTime at,
            Set<EnvelopeNumber> knownToHaveVoted) {
        VoteMeaning meaning = new VoteMeaning(motion, polls, book.pack(), knownToHaveVoted);
        return meaning.motionRefused()
                .or(() -> RuleChecks.gate(book, Rules.GATE_DECISION, at))
                .or(() -> meaning.rely(Rules.DECIDER))
                .or(meaning::bodiesRefused)
                .<VoteResult>map(VoteResult.Refused::new)
                .orElseGet(meaning::read);
    }

    /**
     * Reads the vote of one of two bodies for itself, as its minutes have it. It settles nothing: {@link #voteResult} does when
     * the other body has voted too.
     */
    public static VoteResult ofOneOfTwo(Motion motion, BodyVote poll, DeadlineBook book, LocalDateTime at) {
        VoteMeaning meaning = new VoteMeaning(motion, List.of(poll), book.pack(), Set.of());
        return meaning.motionRefused()
                .or(() -> RuleChecks.gate(book, Rules.GATE_DECISION, at))
                .or(() -> meaning.rely(Rules.DECIDER))
                .or(meaning::pollsRefused)
                .or(meaning::neededVoteRefused)
                .<VoteResult>map(VoteResult.Refused::new)
                .orElseGet(meaning::readAlone);
    }

    /** How the votes end a motion, apart from what that means; the vote needed must be settled. */
    static MotionResult end(Motion motion, List<BodyVote> polls, ResolvedPack pack) {
        VoteMeaning meaning = new VoteMeaning(motion, polls, pack, Set.of());
        return meaning.over(meaning.needed());
    }

    private Optional<Refusal> motionRefused() {
        if (motion.result() != null) {
            String how = motion.result().code();
            return Optional.of(Refusal.of(Why.MOTION_ALREADY_DECIDED, "This motion was already " + how + "."));
        }
        return motion.put().isEmpty()
                ? Optional.of(Refusal.of(Why.NOTHING_PUT, "This motion has no envelopes left."))
                : Optional.empty();
    }

    private Optional<Refusal> bodiesRefused() {
        if (polls.size() != kind().bodies()) {
            return Optional.of(Refusal.under(
                    pack.of(Rules.DECIDER),
                    Why.WRONG_NUMBER_OF_BODIES,
                    "Bodies that voted: " + polls.size() + ". Bodies that must vote: " + kind().bodies() + "."));
        }
        return pollsRefused();
    }

    private Optional<Refusal> pollsRefused() {
        return polls.stream()
                .flatMap(poll -> new BodyVoteChecks(poll, motion.put(), rules).first().stream())
                .findFirst();
    }

    private VoteResult read() {
        return neededVoteRefused().<VoteResult>map(VoteResult.Refused::new).orElseGet(() -> ended(over(needed())));
    }

    private VoteResult readAlone() {
        MotionResult end = over(needed());
        String words = sentence(motion.asks().words(), end, polls, needed()) + ": waiting for the other body.";
        return new VoteResult.Stands(end, null, motion.put(), Set.of(), words, List.copyOf(restsOn));
    }

    private Optional<Refusal> neededVoteRefused() {
        return motion.asks() == DecisionOutcome.REJECT ? voteToRejectRefused() : voteToCountRefused();
    }

    private VoteNeeded needed() {
        return motion.asks() == DecisionOutcome.REJECT ? rules.toReject() : rules.toCount();
    }

    private VoteResult ended(MotionResult end) {
        if (end == MotionResult.CARRIED) {
            return result(end, motion.asks());
        }
        Rule means = end == MotionResult.TIED ? Rules.TIE_MEANS : Rules.FAILED_MOTION_MEANS;
        return rely(means).<VoteResult>map(VoteResult.Refused::new).orElseGet(() -> follows(end, pack.word(means)));
    }

    /**
     * A tie broken toward the motion settles as moved; a motion that failed never does what it asked. Broken the other
     * way, a motion to reject counts; a motion to count rejects only by {@link #rejectedUnmoved}.
     */
    private VoteResult follows(MotionResult end, String word) {
        boolean rejects = word.equals("reject");
        if (!rejects && !word.equals("count")) {
            return result(end, null);
        }
        if (rejects == (motion.asks() == DecisionOutcome.REJECT)) {
            return result(end, end == MotionResult.TIED ? motion.asks() : null);
        }
        return rejects ? rejectedUnmoved(end) : result(end, DecisionOutcome.COUNT);
    }

    /** A failed motion to count rejects no one unless the same votes could have rejected. */
    private VoteResult rejectedUnmoved(MotionResult end) {
        Optional<Refusal> refusal = voteToRejectRefused();
        if (refusal.isPresent()) {
            return new VoteResult.Refused(refusal.get());
        }
        boolean enough = polls.stream()
                .allMatch(poll -> poll.tally()
                                .reversed()
                                .result(rules.toReject(), poll.body().members())
                        != MotionResult.FAILED);
        return result(end, enough ? DecisionOutcome.REJECT : null);
    }

    private Optional<Refusal> voteToRejectRefused() {
        if (kind() == DeciderKind.OFFICIAL) {
            return Optional.empty();
        }
        return rely(Rules.VOTE_TO_REJECT).or(this::oneOfSeveral);
    }

    private Optional<Refusal> voteToCountRefused() {
        boolean leftToPractice = kind() == DeciderKind.OFFICIAL
                || pack.of(InformationRules.VOTE_TO_COUNT).isAbsent();
        return leftToPractice ? Optional.empty() : rely(InformationRules.VOTE_TO_COUNT);
    }

    /** One vote can reject only where one person decides; no one is rejected against the other members. */
    private Optional<Refusal> oneOfSeveral() {
        boolean several = polls.stream().anyMatch(poll -> poll.body().members() > 1);
        return several && rules.toReject() == VoteNeeded.ONE
                ? Optional.of(RuleChecks.unsettled(
                        pack.of(Rules.VOTE_TO_REJECT), "it requires one vote, but several members decide"))
                : Optional.empty();
    }

    private DeciderKind kind() {
        return pack.code(Rules.DECIDER, DeciderKind.class).orElseThrow();
    }

    private MotionResult over(VoteNeeded needed) {
        return MotionResult.over(polls.stream()
                .map(poll -> poll.tally().result(needed, poll.body().members()))
                .toList());
    }

    private Optional<Refusal> rely(Rule rule) {
        restsOn.add(pack.of(rule));
        return RuleChecks.firm(pack, rule);
    }

    private VoteResult result(MotionResult end, @Nullable DecisionOutcome decided) {
        Set<EnvelopeNumber> kept = keptOpen(end, decided);
        Set<EnvelopeNumber> settled = new LinkedHashSet<>(motion.put());
        settled.removeAll(kept);
        DecisionOutcome outcome = settled.isEmpty() ? null : decided;
        String words = sentence(motion.asks().words(), end, polls, needed()) + ": "
                + (outcome == null ? "stays open" : outcome.words()) + ".";
        return new VoteResult.Stands(
                end, outcome, settled.isEmpty() ? motion.put() : settled, kept, words, List.copyOf(restsOn));
    }

    /** What a vote that did not carry would count although its voter is known to have voted. */
    private Set<EnvelopeNumber> keptOpen(MotionResult end, @Nullable DecisionOutcome decided) {
        boolean counts = decided != null && decided != DecisionOutcome.REJECT;
        Set<EnvelopeNumber> kept = new TreeSet<>(motion.put());
        kept.retainAll(end == MotionResult.CARRIED || !counts ? Set.of() : voted);
        return kept;
    }

    /** {@code The motion to reject failed, 1 to 2}, without its full stop. */
    static String sentence(String asks, MotionResult end, List<BodyVote> polls, VoteNeeded needed) {
        String votes = polls.stream().map(poll -> votes(poll, needed)).collect(Collectors.joining(" and "));
        return "The motion to " + asks + " " + verb(end) + ", " + votes;
    }

    /** {@code 2 to 1}; where more said yes than no and it was not enough, with what was needed. */
    private static String votes(BodyVote poll, VoteNeeded needed) {
        VoteTally tally = poll.tally();
        int members = poll.body().members();
        boolean tooFew = needed == VoteNeeded.MAJORITY_OF_MEMBERS
                && tally.yes() > tally.no()
                && tally.result(needed, members) != MotionResult.CARRIED;
        return tally.words() + (tooFew ? " (needed: " + needed.words(members) + ")" : "");
    }

    private static String verb(MotionResult end) {
        return end == MotionResult.TIED ? "was tied" : end.code();
    }
}
