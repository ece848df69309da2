package org.proviso.canvass.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proviso.canvass.CanvassFigures;
import org.proviso.canvass.CanvassService;
import org.proviso.canvass.PlaceFigures;

/** The whole sheet: a row for each voting location in the order of their names and one for the county, by hours. */
public record SheetOfBalances(List<CanvassFigures> accounts, List<SheetRow> rows) {

    public SheetOfBalances {
        accounts = List.copyOf(accounts);
        rows = List.copyOf(rows);
    }

    /** The row of a typed figure; empty where the place is not on the sheet any more. */
    public Optional<SheetRow> row(TypedFigure typed) {
        return rows.stream().filter(row -> row.isOf(typed)).findFirst();
    }

    /** The accounts as they would be with what was typed, so that the balances can be told before anything is saved. */
    public List<CanvassFigures> with(List<TypedFigure> typed) {
        List<CanvassFigures> changed = new ArrayList<>();
        for (CanvassFigures hours : accounts) {
            Map<String, PlaceFigures> locations = new LinkedHashMap<>(hours.locations());
            PlaceFigures county = hours.ofCounty();
            for (TypedFigure figure : typed) {
                if (figure.hours() == hours.hours() && figure.place().equals(CanvassService.COUNTY)) {
                    county = county.with(figure.figure(), figure.number());
                } else if (figure.hours() == hours.hours()) {
                    locations.computeIfPresent(
                            figure.place(), (place, before) -> before.with(figure.figure(), figure.number()));
                }
            }
            changed.add(new CanvassFigures(hours.hours(), locations, county));
        }
        return changed;
    }
}
