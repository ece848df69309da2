package org.proviso.core.matching;

import java.time.LocalDate;
import java.util.List;
import java.util.Random;
import org.proviso.core.PersonName;
import org.proviso.core.VoterId;
import org.proviso.core.matching.index.RollEntry;
import org.proviso.core.matching.index.RollIndex;
import org.proviso.core.matching.index.RollIndexBuilder;

/** A roll of a few named voters among two thousand strangers with invented names; always the same. */
public final class SmallRoll {

    private static final String[] STARTS = {"Bar", "Cel", "Dor", "Fen", "Gar", "Hol", "Jar", "Kel", "Lum", "Mor"};
    private static final String[] ENDS = {"wick", "stead", "by", "ton", "ford", "ley", "man", "sen", "cott", "worth"};
    private static final String[] GIVENS = {"Anna", "Bruce", "Clara", "Dean", "Edith", "Felix", "Grace", "Hugh"};

    private SmallRoll() {}

    public static RollIndex with(RollEntry... named) {
        RollIndexBuilder builder = RollIndex.builder();
        Random random = new Random(7);
        for (int i = 0; i < 2_000; i++) {
            builder.add(entry(
                    "S" + i,
                    STARTS[random.nextInt(10)] + ENDS[random.nextInt(10)],
                    GIVENS[random.nextInt(8)],
                    "",
                    "",
                    LocalDate.of(1940, 1, 1).plusDays(random.nextInt(24_000)),
                    String.valueOf(1 + random.nextInt(2_000)),
                    String.format("%04d", 1 + random.nextInt(9_999))));
        }
        for (RollEntry entry : named) {
            builder.add(entry);
        }
        return builder.build();
    }

    /** What is found for one envelope by itself. */
    public static Match match(Matcher matcher, MatchQuery query) {
        return matcher.matchAll(List.of(query), 1).get(0);
    }

    public static RollEntry entry(
            String id,
            String last,
            String first,
            String middle,
            String suffix,
            LocalDate born,
            String house,
            String last4) {
        PersonName name = new PersonName(last, first, middle, suffix);
        return new RollEntry(new VoterId(id), name, "", born, house, "N Quarry St", "", "49871", last4, "");
    }
}
