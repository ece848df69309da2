package org.proviso.journey.chance;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.proviso.access.NotPermittedException;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.database.TestOffice;
import org.proviso.journey.Office;
import org.proviso.review.CaseState;
import org.springframework.dao.OptimisticLockingFailureException;

/**
 * One canvass played by chance: so many moves one after the other, and then a robot that does what the page of what is
 * missing asks for until the election is closed. The first thing that is wrong ends it.
 */
final class Play {

    /** After so many acts the whole ledger is verified. */
    private static final int WHOLE_EVERY = 100;

    /** What happens at a place in a play: which act, and the seed of whatever is chosen for it. */
    record Move(int act, long seed) {}

    /** How an attempt ended. */
    enum Ended {
        ACCEPTED,
        REFUSED,
        STALE,
        NOT_PERMITTED,
        WRONG
    }

    /** A play that is over: what people did, how often it ended how, where the cases stood before the robot, and what was wrong (null where nothing was). */
    record Result(
            List<String> story,
            Map<Ended, Integer> counts,
            Map<CaseState, Integer> before,
            @Nullable String wrong) {

        int acts() {
            return counts.values().stream().mapToInt(Integer::intValue).sum();
        }
    }

    private final ChanceOffice office;
    private final ChanceActs acts;
    private final Invariants invariants;
    private final List<String> story = new ArrayList<>();
    private final Map<Ended, Integer> counts = new EnumMap<>(Ended.class);
    private List<Refusal> refusals = List.of();
    private Map<CaseState, Integer> before = Map.of();
    private @Nullable String wrong;

    private Play(ChanceOffice office) {
        this.office = office;
        this.acts = new ChanceActs(office);
        this.invariants = new Invariants(office);
    }

    /** The moves of a seed. */
    static List<Move> moves(long seed, int number) {
        Random random = new Random(seed);
        List<Move> moves = new ArrayList<>();
        for (int i = 0; i < number; i++) {
            moves.add(new Move(random.nextInt(1_000_000), random.nextLong()));
        }
        return moves;
    }

    static Result of(TestOffice services, SmallElection election, List<Move> moves) {
        Play play = new Play(ChanceOffice.opened(services, election));
        play.play(moves);
        return new Result(List.copyOf(play.story), Map.copyOf(play.counts), play.before, play.wrong);
    }

    private void play(List<Move> moves) {
        for (Move move : moves) {
            Random random = new Random(move.seed());
            try {
                acts.attempt(move.act() % acts.size(), random).ifPresent(this::perform);
            } catch (RuntimeException e) {
                fail("before an act: " + trace(e));
            }
            if (wrong != null) {
                return;
            }
            if (story.size() % WHOLE_EVERY == 0) {
                check(invariants.whole());
            }
        }
        check(invariants.atTheEnd());
        before = office.states();
        if (wrong == null) {
            new ClosingRobot(office, acts, this).close();
        }
        if (wrong == null) {
            check(invariants.atTheEnd());
        }
    }

    /** Does it, and looks at everything that must hold after it. */
    <T> Ended perform(Attempt<T> attempt) {
        office.clock(office.now().plusSeconds(1));
        story.add(attempt.who() + " " + attempt.words());
        boolean permitted = ChanceOffice.isPermitted(attempt.who(), attempt.needs());
        Ended ended = attempted(attempt, permitted);
        counts.merge(ended, 1, Integer::sum);
        return ended;
    }

    private <T> Ended attempted(Attempt<T> attempt, boolean permitted) {
        try {
            ActResult<T> result = Office.as(attempt.who(), attempt.act());
            refusals = result.refusals();
            story.set(
                    story.size() - 1,
                    story.get(story.size() - 1)
                            + (result.isRefused()
                                    ? ": " + result.refusals().get(0).words()
                                    : ""));
            if (!permitted) {
                return fail("it needs no permission");
            }
            Optional<T> now = result.ifAccepted();
            if (now.isPresent() && attempt.stale()) {
                return fail("it was done with an old version");
            }
            now.ifPresent(attempt.then());
            check(invariants.afterAct(
                    now.isPresent(), now.filter(attempt.hasEntry()).isPresent()));
            return now.isPresent() ? Ended.ACCEPTED : Ended.REFUSED;
        } catch (NotPermittedException e) {
            if (permitted && !attempt.ofTwo()) {
                return fail("it is not permitted: " + e.getMessage());
            }
            check(invariants.afterAct(false, false));
            return Ended.NOT_PERMITTED;
        } catch (OptimisticLockingFailureException e) {
            if (!attempt.stale() && !attempt.maybeStale()) {
                return fail("it is stale: " + e.getMessage());
            }
            check(invariants.afterAct(false, false));
            return Ended.STALE;
        } catch (RuntimeException e) {
            return fail(trace(e));
        }
    }

    private static String trace(RuntimeException e) {
        StringBuilder trace = new StringBuilder(e.toString());
        for (StackTraceElement element : e.getStackTrace()) {
            if (element.getClassName().startsWith("org.proviso")
                    && !element.getClassName().contains("$$")) {
                trace.append("\n        at ").append(element);
            }
        }
        return trace.toString();
    }

    private void check(List<String> found) {
        if (!found.isEmpty()) {
            fail(String.join("; ", found));
        }
    }

    Ended fail(String words) {
        if (wrong == null) {
            wrong = words;
        }
        return Ended.WRONG;
    }

    /** The envelopes that the last attempt was refused for. */
    List<EnvelopeNumber> refusedFor() {
        return refusals.stream()
                .flatMap(refusal -> Stream.ofNullable(refusal.about()))
                .toList();
    }

    boolean isWrong() {
        return wrong != null;
    }

    /** What a person thinks aloud. */
    void note(String words) {
        story.add("(" + words + ")");
    }
}
