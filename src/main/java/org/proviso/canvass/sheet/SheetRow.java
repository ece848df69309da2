package org.proviso.canvass.sheet;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.proviso.canvass.BalanceRule;
import org.proviso.canvass.CanvassPlace;
import org.proviso.canvass.Figure;

/** A voting location in one group of hours, or the county, with every figure of it. */
public record SheetRow(CanvassPlace where, Map<Figure, SheetCell> cells) {

    private static final List<Figure> TYPED_OF_LOCATIONS = typed(true);
    private static final List<Figure> TYPED_OF_COUNTY = typed(false);

    public SheetRow {
        cells = Map.copyOf(cells);
    }

    /** The figures that a person may type here: those that only people can supply and that the balances of it need. */
    public List<Figure> typed() {
        return where.isCounty() ? TYPED_OF_COUNTY : TYPED_OF_LOCATIONS;
    }

    public SheetCell cell(Figure figure) {
        return Objects.requireNonNull(cells.get(figure), "every figure has its cell");
    }

    boolean isOf(TypedFigure typed) {
        return where.name().equals(typed.place()) && where.hours() == typed.hours();
    }

    private static List<Figure> typed(boolean ofLocations) {
        return Arrays.stream(BalanceRule.values())
                .filter(rule -> rule.isOfLocations() == ofLocations)
                .flatMap(rule -> rule.toBeNoted().stream())
                .distinct()
                .toList();
    }
}
