package org.proviso.canvass.sheet;

import jakarta.validation.Valid;
import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.proviso.core.ElectionId;

/** What was typed on a row or on the sheet, and where the figures are from. */
public record SaveFigures(
        @NotNull ElectionId electionId,
        @NotEmpty @Size(max = 10_000) List<@Valid TypedFigure> figures,
        @NotNull @Size(max = 4000) String because) {

    public SaveFigures {
        figures = List.copyOf(figures);
    }
}
