package org.proviso.canvass;

import java.util.EnumMap;
import java.util.Map;

/**
 * What there is to reconcile for one group of hours: the counts of each voting location by its name, and the figures
 * that only the county has, such as its own log or the tabulator's.
 */
public record CanvassFigures(VotingHours hours, Map<String, PlaceFigures> locations, PlaceFigures ofCounty) {

    /** The county's figures: its own where it has one, else the sum of the voting locations'. */
    public PlaceFigures county() {
        PlaceFigures sum = PlaceFigures.sum(locations.values());
        Map<Figure, Integer> county = new EnumMap<>(Figure.class);
        county.putAll(sum.figures());
        if (sum.has(Figure.RECEIVED)) {
            county.put(Figure.BY_LOCATION, sum.number(Figure.RECEIVED));
        }
        county.putAll(ofCounty.figures());
        return new PlaceFigures(county);
    }
}
