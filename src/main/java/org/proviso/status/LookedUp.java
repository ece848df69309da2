package org.proviso.status;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.proviso.core.Election;
import org.proviso.core.rules.Ask;
import org.proviso.core.rules.Reason;

/** What a voter reads of the own envelope. */
public sealed interface LookedUp {

    /**
     * The envelope: where it stands since when, the reasons with their plain words once it is decided, and what the
     * voter may still bring by when. Moments are on the county's clock.
     */
    record Found(
            String electionName,
            LocalDate electionDate,
            OwnState state,
            List<Reason> grounds,
            List<String> reasons,
            List<Ask> asks,
            @Nullable LocalDateTime asksUntil,
            LocalDateTime changedAt,
            Election.Office office)
            implements LookedUp {}

    /**
     * Nothing fits, whichever of the two was wrong, or the office does not know the voter's birth date. The page always
     * asks the voter to call the office then.
     */
    record NothingFits() implements LookedUp {}
}
