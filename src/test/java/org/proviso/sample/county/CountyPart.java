package org.proviso.sample.county;

import java.util.List;
import java.util.stream.Collectors;

/** A precinct or one split of it: its area, post town, and where its people vote. */
public record CountyPart(
        String precinct, String split, Area area, String city, String zip, boolean town, String location) {

    /** The parts of the county, or only those the smaller primary has. */
    static List<CountyPart> all(boolean primary) {
        var areas = Area.all().stream().collect(Collectors.toMap(Area::style, area -> area));
        return WordList.lines("precincts.txt").stream()
                .map(line -> line.split("\\|"))
                .filter(cells -> !primary || cells.length > 7)
                .map(cells -> new CountyPart(
                        cells[0],
                        cells[1].equals("-") ? "" : cells[1],
                        areas.get(cells[2]),
                        cells[3],
                        cells[4],
                        cells[5].equals("town"),
                        cells[6]))
                .toList();
    }

    public String style() {
        return area.style();
    }
}
