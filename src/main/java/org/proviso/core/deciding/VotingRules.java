package org.proviso.core.deciding;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.proviso.core.Election.DecidingBody;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.act.Refusal;
import org.proviso.core.rules.InformationRules;
import org.proviso.core.rules.ResolvedPack;
import org.proviso.core.rules.ResolvedRule;
import org.proviso.core.rules.Rule;
import org.proviso.core.rules.Rules;
import org.proviso.core.rules.StateRules;

/**
 * Vote and quorum by a rule pack. Where the pack and the county say nothing, by common practice: a motion to reject needs
 * a majority of the members of the body, a motion to count a majority of the votes cast, and a recused member does not
 * count toward the quorum.
 */
public final class VotingRules {

    private final ResolvedPack pack;

    private VotingRules(ResolvedPack pack) {
        this.pack = pack;
    }

    public static VotingRules of(ResolvedPack pack) {
        return new VotingRules(pack);
    }

    /** What holds by common practice where a pack says nothing of a rule on vote and quorum; empty for other rules. */
    public static Optional<String> practice(Rule rule) {
        if (rule.equals(InformationRules.VOTE_TO_COUNT)) {
            return Optional.of("a majority of the votes cast");
        }
        return rule.equals(StateRules.QUORUM_COUNTS_RECUSED) ? Optional.of("no") : Optional.empty();
    }

    /** One of the rules in words, and where it is written. */
    public record Line(String words, String source) {}

    /** The rules that hold in a body, in words; an official votes with nobody, so there are none. */
    public List<Line> inWords(DecidingBody body) {
        if (isOfficial()) {
            return List.of();
        }
        List<Line> lines = new ArrayList<>();
        lines.add(line("To reject: ", Rules.VOTE_TO_REJECT, toReject().words(body.members())));
        lines.add(line("To count: ", InformationRules.VOTE_TO_COUNT, toCount().words(body.members())));
        lines.add(line("Quorum: ", StateRules.QUORUM_COUNTS_RECUSED, quorum(body)));
        return lines;
    }

    private Line line(String begins, Rule rule, String needed) {
        ResolvedRule given = pack.of(rule);
        Optional<Refusal> unsettled = unsettled(rule);
        return unsettled
                .map(refusal -> new Line(begins + "not settled. " + refusal.words(), source(given)))
                .orElseGet(() -> new Line(begins + needed + ".", source(given)));
    }

    private String quorum(DecidingBody body) {
        return body.quorum() + " present. A recused member "
                + (quorumCountsRecused() ? "counts toward the quorum" : "does not count toward the quorum");
    }

    private static String source(ResolvedRule given) {
        if (given.isAbsent()) {
            return "common practice";
        }
        String ofWhat = given.rule().equals(Rules.VOTE_TO_REJECT) ? "; of the members by common practice" : "";
        return given.reference().words() + (given.word().equals("majority") ? ofWhat : "");
    }

    VoteNeeded toReject() {
        return isOfficial()
                ? VoteNeeded.ONE
                : pack.code(Rules.VOTE_TO_REJECT, VoteNeeded.class).orElse(VoteNeeded.MAJORITY_OF_MEMBERS);
    }

    VoteNeeded toCount() {
        return isOfficial()
                ? VoteNeeded.ONE
                : pack.code(InformationRules.VOTE_TO_COUNT, VoteNeeded.class).orElse(VoteNeeded.MAJORITY_OF_VOTES_CAST);
    }

    boolean quorumCountsRecused() {
        return pack.isYes(StateRules.QUORUM_COUNTS_RECUSED);
    }

    /** A rule that may be left out stands in the way only where the pack mentions it and nobody read or signed it. */
    Optional<Refusal> unsettled(Rule rule) {
        boolean leftOut = pack.of(rule).isAbsent() && rule.use() == Rule.Use.OPTIONAL;
        return leftOut ? Optional.empty() : RuleChecks.firm(pack, rule);
    }

    /** How many of those present make up the quorum of a vote on these envelopes. */
    int quorumOf(BodyVote poll, Set<EnvelopeNumber> envelopes) {
        return quorumCountsRecused()
                ? poll.present().size()
                : poll.taking(envelopes).size();
    }

    private boolean isOfficial() {
        return pack.code(Rules.DECIDER, DeciderKind.class)
                .filter(kind -> kind == DeciderKind.OFFICIAL)
                .isPresent();
    }
}
