package org.proviso.intake.keying;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.PositiveOrZero;
import jakarta.validation.constraints.Size;
import java.util.Map;

/**
 * What one person has typed so far, box by box as it stands on the screen, right or not; the version is that of the
 * draft last saved, 0 where there is none.
 */
public record SaveKeyingDraft(
        @NotBlank String electionId,
        @NotBlank String envelopeNo,
        @PositiveOrZero int version,

        @NotNull @Size(max = 100)
        Map<@Pattern(regexp = "[a-z][a-z0-9_]{0,59}") String, @NotNull @Size(max = 4000) String> boxes) {}
