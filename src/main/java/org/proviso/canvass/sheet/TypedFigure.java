package org.proviso.canvass.sheet;

import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.jspecify.annotations.Nullable;
import org.proviso.canvass.Figure;
import org.proviso.canvass.VotingHours;

/**
 * A figure as somebody typed it on the sheet, with the number that stood there (null for none) and the note it was from,
 * as they were seen.
 */
public record TypedFigure(
        @NotBlank @Size(max = 200) String place,
        @NotNull VotingHours hours,
        @NotNull Figure figure,
        @Nullable Integer seen,
        int seenNote,
        @Min(0) @Max(MOST) int number) {

    /** No voting location has more envelopes than this. */
    public static final int MOST = 999_999;
}
