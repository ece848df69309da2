package org.proviso.status;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.proviso.core.CheckedReceipt.Problem;
import org.proviso.core.Election;
import org.proviso.core.rules.Ask;

/** What a voter reads of the own envelope. */
public sealed interface LookupResult {

    /**
     * The envelope: where it stands since when and how it came, the reasons with their plain words once it is decided,
     * and before, whether the registration was found, what the voter may still bring by when, and when it is to be
     * decided (null where nobody can say). {@code untilTheMeeting}: what may be brought until the board meets, while no
     * meeting is called. {@code ways}: how it may reach the office, as codes of the rules, empty where the pack does not say.
     * Moments are on the county's clock.
     */
    record Found(
            Election election,
            VoterCaseState state,
            List<OwnReason> reasons,
            List<VoterAsk> asks,
            Set<Ask> untilTheMeeting,
            Map<Ask, List<String>> ways,
            Arrival arrival,
            boolean registrationFound,
            @Nullable PlannedDecision planned,
            LaterIdentification papers,
            LocalDateTime changedAt)
            implements LookupResult {}

    /**
     * Nothing fits, whichever of the two was wrong, or the office does not know the voter's birth date. The page always
     * asks the voter to call the office then. {@code slip} follows from the number alone, never from what is kept; null
     * where the number has none, or has no check digit.
     */
    record NothingFits(@Nullable Problem slip) implements LookupResult {}
}
