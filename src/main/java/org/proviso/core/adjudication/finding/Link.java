package org.proviso.core.adjudication.finding;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.proviso.core.VoterId;
import org.proviso.core.adjudication.facts.VoterIdentityFact;
import org.proviso.core.matching.Candidate;
import org.proviso.core.matching.Match;

/**
 * How an envelope stands to the roll: the pairing a person confirmed, the one the match presumes, or none. The voter
 * id is null where there is none; candidates are listed where several fit; {@code likeness} is the match in words with the figure behind it.
 */
public record Link(
        VoterIdentityFact identity,
        @Nullable VoterId voterId,
        double probability,
        List<String> likeness,
        List<Candidate> candidates) {

    private static final double LEAST_SHOWN = 0.001;

    /** A link with no other candidates to show. */
    public Link(VoterIdentityFact identity, @Nullable VoterId voterId, double probability, List<String> likeness) {
        this(identity, voterId, probability, likeness, List.of());
    }

    /** What a match presumes: only a sure one names a voter, and even that is for a person to confirm. */
    public static Link presumed(Match match) {
        Candidate best = match.best().orElse(null);
        double probability = best == null ? 0 : best.probability();
        List<String> likeness = best == null ? List.of() : likeness(match.reason(), best.evidence());
        return switch (match.verdict()) {
            case SURE -> new Link(VoterIdentityFact.PRESUMED, named(best), probability, likeness);
            case LIKELY -> new Link(VoterIdentityFact.ONE_FITS_WELL, named(best), probability, likeness);
            case AMBIGUOUS -> new Link(VoterIdentityFact.SEVERAL_FIT, null, probability, likeness, match.candidates());
            case NONE -> new Link(VoterIdentityFact.NONE_FITS, null, probability, List.of());
        };
    }

    private static VoterId named(@Nullable Candidate best) {
        return Objects.requireNonNull(best, "a match with one voter names the candidate")
                .voterId();
    }

    /** Why the match leaves open who it is, of one or several; empty where it does not, or says no ground. */
    public String doubt() {
        return identity == VoterIdentityFact.SEVERAL_FIT && !likeness.isEmpty() ? likeness.get(0) : "";
    }

    private static List<String> likeness(String reason, List<String> evidence) {
        return Stream.concat(Stream.of(reason).filter(words -> !words.isEmpty()), evidence.stream())
                .toList();
    }

    /**
     * Whether a person would read both alike: the same voter, words and candidates, and no figure moved by a tenth of a
     * percent, which is the least that is shown.
     */
    public boolean saysTheSame(Link other) {
        return identity == other.identity
                && Objects.equals(voterId, other.voterId)
                && likeness.equals(other.likeness)
                && Math.abs(probability - other.probability) < LEAST_SHOWN
                && lists(other.candidates)
                && other.lists(candidates);
    }

    private boolean lists(List<Candidate> others) {
        return others.stream()
                .filter(candidate -> candidate.probability() >= LEAST_SHOWN)
                .allMatch(candidate -> candidates.stream().anyMatch(own -> alike(own, candidate)));
    }

    private static boolean alike(Candidate candidate, Candidate other) {
        return candidate.voterId().equals(other.voterId())
                && candidate.evidence().equals(other.evidence())
                && Math.abs(candidate.probability() - other.probability()) < LEAST_SHOWN;
    }

    /** The link with a person's word on it. */
    public Link confirmed() {
        return new Link(VoterIdentityFact.CONFIRMED, voterId, probability, likeness);
    }

    /** Whether a person has settled who the voter is. */
    public boolean isSettled() {
        return identity == VoterIdentityFact.CONFIRMED || identity == VoterIdentityFact.NOT_ON_ROLL;
    }
}
