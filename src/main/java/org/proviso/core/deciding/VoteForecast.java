package org.proviso.core.deciding;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.proviso.core.Election.DecidingBody;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.Key;
import org.proviso.core.UserName;
import org.proviso.core.rules.DeadlineBook;
import org.proviso.core.rules.ResolvedRule;
import org.proviso.core.rules.Rule;
import org.proviso.core.rules.Rules;

/**
 * What a tied and a failed vote will mean for each envelope, before anybody votes. It goes through the votes that a body
 * could cast and reads each with {@link VoteMeaning}, so that it can say nothing else than the vote itself will.
 */
public final class VoteForecast {

    /** So many envelope numbers are written out. */
    private static final int WRITTEN_OUT = 12;

    private final Motion motion;
    private final DecidingBody body;
    private final int bodies;
    private final DeadlineBook book;
    private final LocalDateTime at;

    private VoteForecast(Motion motion, DecidingBody body, int bodies, DeadlineBook book, LocalDateTime at) {
        this.motion = motion;
        this.body = body;
        this.bodies = bodies;
        this.book = book;
        this.at = at;
    }

    /**
     * In sentences, of a motion before one of so many bodies like this one. Whose voter is known to have voted is asked only
     * if it matters.
     */
    public static List<String> of(
            Motion motion,
            DecidingBody body,
            int bodies,
            DeadlineBook book,
            LocalDateTime at,
            Supplier<Set<EnvelopeNumber>> knownToHaveVoted) {
        return new VoteForecast(motion, body, bodies, book, at).sentences(knownToHaveVoted);
    }

    private List<String> sentences(Supplier<Set<EnvelopeNumber>> knownToHaveVoted) {
        if (read(tally(body.members(), 0), Set.of()) instanceof VoteResult.Refused refused) {
            return List.of("A vote on this motion does not stand now. "
                    + refused.refusal().words());
        }
        Map<MotionResult, List<VoteResult>> endings = endings(Set.of());
        if (endings.values().stream().flatMap(Collection::stream).anyMatch(VoteForecast::counts)) {
            endings = endings(knownToHaveVoted.get());
        }
        List<String> sentences = new ArrayList<>();
        endings.forEach((end, results) -> sentences.add(sentence(end, results)));
        return sentences;
    }

    private static boolean counts(VoteResult result) {
        return result instanceof VoteResult.Stands stands
                && stands.decided() != null
                && stands.decided() != DecisionOutcome.REJECT;
    }

    /** All that votes which do not carry the motion come to, each once. */
    private Map<MotionResult, List<VoteResult>> endings(Set<EnvelopeNumber> knownToHaveVoted) {
        Map<MotionResult, Map<String, VoteResult>> found = new EnumMap<>(MotionResult.class);
        for (VoteTally tally : tallies()) {
            MotionResult end = VoteMeaning.end(motion, polls(tally), book.pack());
            if (end != MotionResult.CARRIED) {
                VoteResult result = read(tally, knownToHaveVoted);
                found.computeIfAbsent(end, any -> new LinkedHashMap<>()).putIfAbsent(meaning(result), result);
            }
        }
        Map<MotionResult, List<VoteResult>> endings = new LinkedHashMap<>();
        for (MotionResult end : List.of(MotionResult.TIED, MotionResult.FAILED)) {
            Optional.ofNullable(found.get(end)).ifPresent(results -> endings.put(end, List.copyOf(results.values())));
        }
        return endings;
    }

    private VoteResult read(VoteTally tally, Set<EnvelopeNumber> knownToHaveVoted) {
        return VoteMeaning.voteResult(motion, polls(tally), book, at, knownToHaveVoted);
    }

    /** Every way in which the members of a body can vote, somebody voting yes or no. */
    private List<VoteTally> tallies() {
        List<VoteTally> tallies = new ArrayList<>();
        for (int yes = 0; yes <= body.members(); yes++) {
            for (int no = 0; yes + no <= body.members(); no++) {
                if (yes + no > 0) {
                    tallies.add(tally(yes, no));
                }
            }
        }
        return tallies;
    }

    private static VoteTally tally(int yes, int no) {
        return new VoteTally(yes, no);
    }

    /** Where two bodies vote, both alike. */
    private List<BodyVote> polls(VoteTally tally) {
        Map<UserName, Vote> votes = new LinkedHashMap<>();
        for (int member = 0; member < body.members(); member++) {
            Vote vote = member < tally.yes() ? Vote.YES : member < tally.yes() + tally.no() ? Vote.NO : Vote.ABSTAINS;
            votes.put(new UserName("member-" + (member + 1)), vote);
        }
        BodyVote poll = new BodyVote(body, new LinkedHashSet<>(votes.keySet()), Map.of(), votes);
        return Collections.nCopies(bodies, poll);
    }

    /** Two results that settle the same in the same way mean the same, whatever the votes were. */
    private static String meaning(VoteResult result) {
        return result instanceof VoteResult.Stands stands
                ? stands.decided() + " " + stands.envelopes() + " " + stands.keptOpen()
                : ((VoteResult.Refused) result).refusal().words();
    }

    private String sentence(MotionResult end, List<VoteResult> results) {
        String begins = end == MotionResult.TIED ? "If the vote is tied: " : "If the motion fails: ";
        String what = results.stream().map(this::words).collect(Collectors.joining("; or "));
        return begins + (results.size() > 1 ? "depending on the votes, " : "") + what + "." + byRule(end, results);
    }

    private String words(VoteResult result) {
        if (result instanceof VoteResult.Refused refused) {
            return "the vote does not stand. " + refused.refusal().words().replaceFirst("\\.$", "");
        }
        VoteResult.Stands stands = (VoteResult.Stands) result;
        List<String> parts = new ArrayList<>();
        DecisionOutcome decided = stands.decided();
        Set<EnvelopeNumber> ready = new LinkedHashSet<>(stands.envelopes());
        ready.removeAll(stands.keptOpen());
        if (decided != null) {
            parts.add(numbers(stands.envelopes()) + (one(stands.envelopes()) ? " is" : " are") + " decided: "
                    + decided.words());
        } else if (!ready.isEmpty()) {
            parts.add(numbers(ready) + stay(ready));
        }
        if (!stands.keptOpen().isEmpty()) {
            boolean one = one(stands.keptOpen());
            parts.add(numbers(stands.keptOpen()) + stay(stands.keptOpen()) + ", because records show that the "
                    + (one ? "voter" : "voters") + " voted");
        }
        return String.join("; ", parts);
    }

    private static String stay(Set<EnvelopeNumber> envelopes) {
        return one(envelopes) ? " stays ready" : " stay ready";
    }

    private static boolean one(Set<EnvelopeNumber> envelopes) {
        return envelopes.size() == 1;
    }

    private static String numbers(Set<EnvelopeNumber> envelopes) {
        List<EnvelopeNumber> sorted = envelopes.stream().sorted().toList();
        return sorted.size() <= WRITTEN_OUT
                ? Key.join(", ", sorted)
                : Key.join(", ", sorted.subList(0, WRITTEN_OUT)) + " and " + (sorted.size() - WRITTEN_OUT) + " more";
    }

    private String byRule(MotionResult end, List<VoteResult> results) {
        Rule rule = end == MotionResult.TIED ? Rules.TIE_MEANS : Rules.FAILED_MOTION_MEANS;
        ResolvedRule given = book.pack().of(rule);
        boolean stand = results.stream().allMatch(VoteResult.Stands.class::isInstance);
        return stand ? " Rule on " + rule.meaning() + ": " + given.reference().words() + "." : "";
    }
}
