package org.proviso.core.adjudication.finding;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.proviso.core.BallotStyle;
import org.proviso.core.Contest;
import org.proviso.core.PrecinctId;
import org.proviso.core.PrecinctPart;

/** What is on the ballots of an election and which precinct part gets which, for looking up. Thread-safe. */
public final class BallotCatalog {

    private final Map<String, Contest> contests = new HashMap<>();
    private final Set<String> federal = new LinkedHashSet<>();
    private final Map<String, BallotStyle> styles = new HashMap<>();
    private final Map<PrecinctId, List<PrecinctPart>> parts = new HashMap<>();

    /** Each list in the order of its file. */
    public BallotCatalog(List<Contest> contests, List<BallotStyle> styles, List<PrecinctPart> precincts) {
        for (Contest contest : contests) {
            this.contests.put(contest.contestId(), contest);
            if (contest.level() == Contest.Level.FEDERAL) {
                federal.add(contest.contestId());
            }
        }
        styles.forEach(style -> this.styles.put(style.style(), style));
        for (PrecinctPart part : precincts) {
            PrecinctId key = new PrecinctId(part.precinct(), part.split());
            parts.computeIfAbsent(key, any -> new ArrayList<>()).add(part);
        }
    }

    public Optional<BallotStyle> style(String style) {
        return Optional.ofNullable(styles.get(style));
    }

    /** The styles that have exactly these contests, in the order of their names. */
    public List<String> stylesWith(Set<String> contestIds) {
        return styles.values().stream()
                .filter(style -> style.contestIds().equals(contestIds))
                .map(BallotStyle::style)
                .sorted()
                .toList();
    }

    /** Every style, in no order. */
    public List<BallotStyle> styles() {
        return List.copyOf(styles.values());
    }

    /** Every voting location that a precinct part names, in the order of their names: something is expected from each. */
    public List<String> votingLocations() {
        return parts().stream()
                .map(PrecinctPart::votingLocation)
                .filter(location -> !location.isEmpty())
                .distinct()
                .sorted()
                .toList();
    }

    /** Every row of a precinct part, in no order. */
    public List<PrecinctPart> parts() {
        return parts.values().stream().flatMap(List::stream).toList();
    }

    /** The rows of a precinct part; {@link Records#rows}. */
    public List<PrecinctPart> rows(PrecinctId part) {
        return Collections.unmodifiableList(parts.getOrDefault(part, List.of()));
    }

    public Set<String> federalContests() {
        return Collections.unmodifiableSet(federal);
    }

    /** The title on the ballot, or the ID of a contest that is not listed. */
    public String contestTitle(String contestId) {
        Contest contest = contests.get(contestId);
        return contest == null ? contestId : contest.title();
    }
}
