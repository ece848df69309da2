package org.proviso.core;

/** One office or measure in one district; the same contest is the same office and the same district. */
public record Contest(String contestId, String title, String district, Level level) {

    /** Whose office or question it is. */
    public enum Level implements Code {
        FEDERAL,
        STATEWIDE,
        STATE_DISTRICT,
        COUNTY,
        LOCAL
    }
}
