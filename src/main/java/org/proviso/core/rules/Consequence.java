package org.proviso.core.rules;

import org.jspecify.annotations.Nullable;
import org.proviso.core.Code;
import org.proviso.core.contests.ContestPolicy;

/**
 * What a rule pack says follows from a reason: what it does to the ballot, under which policy a part counts (only for
 * {@code IN_PART}), and what the voter may bring to cure it (null where nothing cures it).
 */
public record Consequence(
        Effect does,
        @Nullable ContestPolicy policy,
        @Nullable Ask cure) {

    /** What a reason does. Sent on and administrative end are not decisions on the vote. */
    public enum Effect implements Code {
        NONE,
        IN_PART,
        REJECT,
        SENT_ON,
        ADMINISTRATIVE_END
    }

    /** Whether it costs the voter something, so that it may rest only on a firm value. */
    public boolean costsTheVoter() {
        return does == Effect.REJECT || does == Effect.IN_PART;
    }

    /** As it reads beside an answer. */
    public String words() {
        String what = switch (does) {
            case NONE -> "no effect; the ballot can count";
            case IN_PART ->
                policy == ContestPolicy.FEDERAL_CONTESTS
                        ? "only federal contests count"
                        : "only contests that are also on the voter's own ballot count";
            case REJECT -> "the ballot is rejected";
            case SENT_ON -> "the envelope is sent on to the voter's home county";
            case ADMINISTRATIVE_END -> "there is no vote to decide";
        };
        return cure == null ? what : what + ", unless the voter does this in time: " + cure.words();
    }

    /** As it is spelled in a resolved pack. */
    public String spelled() {
        return does.code()
                + (policy == null ? "" : " " + policy.code())
                + (cure == null ? "" : ", cure " + cure.code());
    }
}
