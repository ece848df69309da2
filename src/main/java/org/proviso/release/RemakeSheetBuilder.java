package org.proviso.release;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import org.proviso.core.ElectionId;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.review.Decision;

/** Puts the ballots of which a part counts together by what is to be copied from them. */
final class RemakeSheetBuilder {

    /** The same is copied from ballots of the same style for voters of the same style and contests. */
    private record StylePair(String cast, String right, Set<String> contests) {

        String order() {
            return cast + " " + right + " " + String.join(";", contests);
        }
    }

    private RemakeSheetBuilder() {}

    static List<RemakeSheet> of(ElectionId electionId, int batchNo, Collection<EnvelopeToOpen> envelopes) {
        Map<String, StylePair> pairs = new TreeMap<>();
        Map<String, Integer> ballots = new LinkedHashMap<>();
        for (EnvelopeToOpen envelope : envelopes) {
            Decision decision = envelope.decision();
            if (decision.as() == DecisionOutcome.COUNT_IN_PART) {
                StylePair pair = new StylePair(
                        decision.ballot().styleCast(), decision.ballot().styleRight(), decision.contests());
                pairs.put(pair.order(), pair);
                ballots.merge(pair.order(), 1, Integer::sum);
            }
        }
        List<RemakeSheet> sheets = new ArrayList<>();
        pairs.forEach((order, pair) -> sheets.add(new RemakeSheet(
                electionId,
                batchNo,
                sheets.size() + 1,
                pair.cast(),
                pair.right(),
                pair.contests(),
                Objects.requireNonNull(ballots.get(order), "a pair of styles has its ballots"),
                null,
                null,
                null,
                0)));
        return sheets;
    }
}
