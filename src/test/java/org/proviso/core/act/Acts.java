package org.proviso.core.act;

/** What tests expect of an act: that it was recorded, or that it was refused for one reason. */
public final class Acts {

    private Acts() {}

    /** What is new; fails with the reasons where the act was refused. */
    public static <T> T accepted(ActResult<T> result) {
        return result.ifAccepted().orElseThrow(() -> new AssertionError("The act was refused: " + result.refusals()));
    }

    /** The one reason; fails where the act was recorded, or refused for several. */
    public static Refusal refused(ActResult<?> result) {
        if (result.refusals().size() != 1) {
            throw new AssertionError("The act was not refused for one reason: " + result);
        }
        return result.refusals().get(0);
    }
}
