package org.proviso.canvass;

import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.proviso.core.ElectionId;

/** A number that only a person can tell, for a voting location or for {@link CanvassService#COUNTY}, and where it is from. */
public record NoteFigure(
        @NotNull ElectionId electionId,
        @NotBlank @Size(max = 200) String place,
        @NotNull VotingHours hours,
        @NotNull Figure figure,
        @Min(0) int number,
        @NotBlank @Size(max = 4000) String because) {}
