package org.proviso.intake;

import java.time.LocalDateTime;
import org.proviso.core.adjudication.finding.DateWords;

/** Why the stamp of something that came in cannot be right. */
public final class StampWords {

    private StampWords() {}

    public static String laterThanNow(LocalDateTime stamp, LocalDateTime now) {
        return "The stamp, " + DateWords.moment(stamp) + ", is later than now, " + DateWords.moment(now)
                + ". Check its date.";
    }

    /** {@code ballot} names the one that was cast. */
    public static String earlierThan(String ballot, LocalDateTime stamp, LocalDateTime cast) {
        return "The stamp, " + DateWords.moment(stamp) + ", is earlier than " + ballot + ", cast at "
                + DateWords.moment(cast) + ". Check its date.";
    }
}
