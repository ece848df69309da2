package org.proviso.sample.county;

import java.util.ArrayList;
import java.util.List;

/** An area all of whose voters get the same ballot: the districts that lie over it. */
record Area(String style, List<String> districts) {

    /** The areas of the county, in order of their style. */
    static List<Area> all() {
        return WordList.lines("areas.txt").stream().map(Area::read).toList();
    }

    private static Area read(String line) {
        String[] cells = line.split("\\|");
        List<String> districts = new ArrayList<>(List.of("State", "Tamarack County"));
        districts.add("US House " + cells[1]);
        districts.add("State Senate " + cells[2]);
        districts.add("State House " + cells[3]);
        if (!cells[4].equals("-")) {
            districts.add("City of " + cells[4]);
        }
        districts.add(cells[5] + " Schools");
        return new Area(cells[0], List.copyOf(districts));
    }
}
