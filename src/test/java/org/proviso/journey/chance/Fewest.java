package org.proviso.journey.chance;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.proviso.database.TestOffice;

/** The fewest moves found of a play that went wrong, by leaving out some as long as the same goes wrong. */
record Fewest(List<Play.Move> moves, Play.Result result) {

    /** Tries for so many seconds at most. */
    static Fewest of(
            TestOffice office, SmallElection election, List<Play.Move> moves, Play.Result result, int seconds) {
        long end = System.nanoTime() + seconds * 1_000_000_000L;
        Fewest fewest = new Fewest(moves, result);
        int lot = Math.max(1, moves.size() / 2);
        while (lot >= 1 && System.nanoTime() < end) {
            boolean less = false;
            for (int from = 0; from < fewest.moves.size() && System.nanoTime() < end; ) {
                List<Play.Move> some = new ArrayList<>(fewest.moves);
                some.subList(from, Math.min(some.size(), from + lot)).clear();
                Play.Result again = Play.of(office, election, some);
                if (fewest.isSameAs(again)) {
                    fewest = new Fewest(some, again);
                    less = true;
                } else {
                    from += lot;
                }
            }
            lot = less && lot > 1 ? lot : lot / 2;
        }
        return fewest;
    }

    /** By the first words of what is wrong: numbers and envelopes may be others. */
    private boolean isSameAs(Play.Result again) {
        return again.wrong() != null && kind(again.wrong()).equals(kind(Objects.requireNonNull(result.wrong())));
    }

    private static String kind(String wrong) {
        String plain = wrong.lines().findFirst().orElse("").replaceAll("P-\\d+|\\d+", "#");
        return plain.substring(0, Math.min(60, plain.length()));
    }

    /** As it is printed. */
    String told(long seed) {
        return "seed " + seed + ", " + moves.size() + " moves left of it:\n    " + String.join("\n    ", result.story())
                + "\n  wrong: " + result.wrong();
    }
}
