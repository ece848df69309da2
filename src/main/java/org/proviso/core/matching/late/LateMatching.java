package org.proviso.core.matching.late;

import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.VoterId;
import org.proviso.core.matching.Candidate;
import org.proviso.core.matching.Competition;
import org.proviso.core.matching.Match;
import org.proviso.core.matching.MatchQuery;
import org.proviso.core.matching.MatchVerdict;
import org.proviso.core.matching.Matcher;
import org.proviso.core.matching.index.RollEntry;

/**
 * Matches to a newer roll the envelopes that its differences may concern, and no others: those near a voter who came, went
 * or changed, and those whose claim is weighed against that of such an envelope (see {@link Competition}). They come out
 * as if all had been matched; all others would come out as before.
 */
public final class LateMatching {

    private final Matcher matcher;
    private final List<MatchQuery> open;
    private final Map<EnvelopeNumber, VoterId> claims;
    private final Function<Set<VoterId>, Collection<RollEntry>> records;
    private final int threads;

    /**
     * @param open the envelopes that the match may still move
     * @param claims by envelope number the one voter that a match named before, where it named one; null or absent else
     * @param records the newer roll's records of some voters by their numbers
     */
    public LateMatching(
            Matcher matcher,
            List<MatchQuery> open,
            Map<EnvelopeNumber, VoterId> claims,
            Function<Set<VoterId>, Collection<RollEntry>> records,
            int threads) {
        this.matcher = matcher;
        this.open = open;
        this.claims = claims;
        this.records = records;
        this.threads = threads;
    }

    /** What the match now says of the envelopes near these voters, and of those that compete with them. */
    public List<Match> near(NearVoters changed) {
        Set<MatchQuery> again = new HashSet<>(changed.among(open));
        again.addAll(rivals(again));
        Set<EnvelopeNumber> numbers = again.stream().map(MatchQuery::envelopeNo).collect(Collectors.toSet());
        return matched(withHolders(again)).stream()
                .filter(match -> numbers.contains(match.envelopeNo()))
                .toList();
    }

    /** Envelopes near a voter whom one of these claimed before or claims now. */
    private List<MatchQuery> rivals(Set<MatchQuery> again) {
        Set<VoterId> claimed = matched(in(again)).stream()
                .filter(match -> match.verdict() == MatchVerdict.SURE || match.verdict() == MatchVerdict.LIKELY)
                .map(match -> match.candidates().get(0).voterId())
                .collect(Collectors.toSet());
        again.stream()
                .map(query -> claims.get(query.envelopeNo()))
                .filter(Objects::nonNull)
                .forEach(claimed::add);
        NearVoters near = new NearVoters();
        records.apply(claimed).forEach(near::add);
        return near.among(open);
    }

    /** With these the envelopes whose claim, which stays, is on one of their candidates. */
    private List<MatchQuery> withHolders(Set<MatchQuery> again) {
        Set<VoterId> candidates = matched(in(again)).stream()
                .flatMap(match -> match.candidates().stream())
                .map(Candidate::voterId)
                .collect(Collectors.toSet());
        return open.stream()
                .filter(query -> again.contains(query) || candidates.contains(claims.get(query.envelopeNo())))
                .toList();
    }

    private List<MatchQuery> in(Set<MatchQuery> some) {
        return open.stream().filter(some::contains).toList();
    }

    private List<Match> matched(List<MatchQuery> envelopes) {
        return envelopes.isEmpty() ? List.of() : matcher.matchAll(envelopes, threads);
    }
}
