package org.proviso.journey.chance;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.proviso.core.deciding.DeciderKind;
import org.proviso.database.DatabaseKind;
import org.proviso.database.TestOffice;
import org.proviso.journey.chance.Play.Ended;

/**
 * Plays canvasses by chance for so many minutes, from a seed on. A command, never a test:
 * {@code ChancePlay MINUTES [SEED [MOVES [DATABASE [DECIDER]]]]}, from the project's folder; the database is {@code h2} or
 * {@code postgresql}, the decider {@code board}, {@code official} or {@code two_bodies}. What is wrong in a play is printed with its seed
 * and the fewest acts that lead to it.
 */
public final class ChancePlay {

    private static final int MOVES = 400;

    /** Seconds for finding the fewest acts. */
    private static final int SHRINKING = Integer.getInteger("proviso.chance.shrinking", 60);

    private ChancePlay() {}

    public static void main(String[] arguments) throws IOException {
        long end = System.nanoTime() + (long) (Double.parseDouble(arguments[0]) * 60e9);
        long seed = arguments.length > 1 ? Long.parseLong(arguments[1]) : 1;
        int length = arguments.length > 2 ? Integer.parseInt(arguments[2]) : MOVES;
        DatabaseKind database = DatabaseKind.valueOf(word(arguments, 3, "h2"));
        DeciderKind decider = DeciderKind.valueOf(word(arguments, 4, "board"));
        TestOffice office = TestOffice.on(database);
        SmallElection election = SmallElection.in(Files.createTempDirectory(Path.of("target"), "chance-"), decider);
        Map<Ended, Integer> counts = new EnumMap<>(Ended.class);
        int plays = 0;
        int wrong = 0;
        long start = System.nanoTime();
        do {
            List<Play.Move> moves = Play.moves(seed, length);
            Play.Result result = Play.of(office, election, moves);
            plays++;
            result.counts().forEach((ended, number) -> counts.merge(ended, number, Integer::sum));
            if (result.wrong() != null) {
                wrong++;
                System.out.println(
                        Fewest.of(office, election, moves, result, SHRINKING).told(seed));
            }
            System.out.printf(
                    "seed %d: %s before the robot; %d plays, %s, %d wrong (%d s)%n",
                    seed, result.before(), plays, counts, wrong, (System.nanoTime() - start) / 1_000_000_000);
            seed++;
        } while (System.nanoTime() < end);
        System.exit(wrong == 0 ? 0 : 1);
    }

    private static String word(String[] arguments, int place, String otherwise) {
        return (arguments.length > place ? arguments[place] : otherwise).toUpperCase(Locale.ROOT);
    }
}
