package org.proviso.intake.keying;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.PositiveOrZero;
import jakarta.validation.constraints.Size;
import java.util.Map;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;

/**
 * What one person has typed so far, box by box as it stands on the screen, right or not; the version is that of the
 * draft last saved, 0 where there is none.
 */
public record SaveKeyingDraft(
        @NotNull ElectionId electionId,
        @NotNull EnvelopeNumber envelopeNo,
        @PositiveOrZero int version,

        @NotNull @Size(max = 100)
        Map<@Pattern(regexp = "[a-z][a-z0-9_]{0,59}") String, @NotNull @Size(max = 4000) String> boxes) {}
