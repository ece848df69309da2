package org.proviso.core.adjudication.finding;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.FactWord;
import org.proviso.core.contests.BallotContests;

/**
 * The facts of one case: a finding for each fact that was looked for, and the contests in play ({@code contests} is
 * null where the right style is not known). A fact without a finding is unknown.
 */
public record CaseFacts(
        Map<Fact<?>, Finding> findings, @Nullable BallotContests contests) implements FactReader {

    @Override
    @SuppressWarnings("unchecked") // a finding is stored under a fact of its own words only
    public <V extends Enum<V> & FactWord> @Nullable Set<V> all(Fact<V> fact) {
        return (Set<V>) finding(fact).words();
    }

    public Finding finding(Fact<?> fact) {
        return findings.getOrDefault(fact, Finding.UNKNOWN);
    }

    public List<Evidence> evidence(Fact<?> fact) {
        return finding(fact).evidence();
    }
}
