package org.proviso.core.act;

import java.util.List;
import java.util.Objects;
import org.proviso.core.act.Refusal.Why;

/** Reads what came of an act, for tests. */
public final class ActResults {

    private ActResults() {}

    /** What is new; fails with the reasons where the act was refused. */
    public static <T> T accepted(ActResult<T> result) {
        return result.ifAccepted().orElseThrow(() -> new AssertionError("refused: " + result.refusals()));
    }

    /** The one reason; fails where the act was recorded, or refused for several. */
    public static Refusal refused(ActResult<?> result) {
        if (result.refusals().size() != 1) {
            throw new AssertionError("not refused for one reason: " + result);
        }
        return result.refusals().get(0);
    }

    /** Every ground on which it was refused; none where it was recorded. */
    public static List<Why> whys(ActResult<?> result) {
        return result.refusals().stream().map(Refusal::why).toList();
    }

    /** The first ground; fails where the act was recorded. */
    public static Why why(ActResult<?> result) {
        return first(result).why();
    }

    /** The box of the form that the first reason is about; fails where it is about none. */
    public static String field(ActResult<?> result) {
        return Objects.requireNonNull(first(result).field(), "it is about one box");
    }

    private static Refusal first(ActResult<?> result) {
        return result.refusals().stream().findFirst().orElseThrow(() -> new AssertionError("recorded: " + result));
    }
}
