package org.proviso.sample.county;

import org.proviso.core.StreetSegment;

/** A house or apartment of the county: its number, street segment, unit, and the precinct part it lies in. */
public record Dwelling(int number, String unit, StreetSegment segment, CountyPart part) {

    public String street() {
        return segment.street();
    }

    public String line() {
        return number + " " + segment.street();
    }
}
