package org.proviso.intake.correction;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;
import java.time.LocalDateTime;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.proviso.core.Envelope;
import org.proviso.core.YesNo;

/** Where and with which ballot an envelope was cast, as it should have been received. */
public record CorrectedCast(
        @NotNull @Size(max = 200) String votingLocation,
        @NotNull @Size(max = 60) String precinct,
        @NotNull @Size(max = 60) String ballotStyle,
        @NotNull @Size(max = 40) String partyBallot,
        @Nullable LocalDateTime castAt,
        @NotNull YesNo extendedHours,
        @NotNull YesNo inLineAtClose,

        @NotNull @Size(max = 10) Set<@Pattern(regexp = "[a-z][a-z0-9_]{0,39}") String> issueReasons) {

    Envelope.Cast cast() {
        return new Envelope.Cast(
                votingLocation.strip(),
                precinct.strip(),
                ballotStyle.strip(),
                partyBallot.strip(),
                castAt,
                extendedHours,
                inLineAtClose,
                issueReasons);
    }
}
