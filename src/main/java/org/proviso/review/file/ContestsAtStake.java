package org.proviso.review.file;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.proviso.core.adjudication.CaseReport;
import org.proviso.core.adjudication.finding.Records;
import org.proviso.core.contests.BallotContests;

/**
 * The contests at stake, by title: to count, on the ballot but not to count, and the voter's own that the ballot lacks.
 */
public record ContestsAtStake(List<String> count, List<String> dropped, List<String> missing) {

    /** Empty where the ballot cast is the voter's own, or nobody knows which is. */
    static Optional<ContestsAtStake> of(CaseReport report, Records records) {
        BallotContests contests = report.presumed().facts().contests();
        if (contests == null
                || (contests.cast().equals(contests.right())
                        && report.outlook().outcome().contests().isEmpty())) {
            return Optional.empty();
        }
        Set<String> counted = report.outlook().outcome().contests();
        Set<String> count = new LinkedHashSet<>(counted.isEmpty() ? contests.cast() : counted);
        if (counted.isEmpty()) {
            count.retainAll(contests.right());
        }
        Set<String> dropped = new LinkedHashSet<>(contests.cast());
        dropped.removeAll(count);
        return Optional.of(new ContestsAtStake(
                titles(count, records), titles(dropped, records), titles(contests.missing(), records)));
    }

    private static List<String> titles(Collection<String> ids, Records records) {
        return ids.stream().map(records::contestTitle).toList();
    }
}
