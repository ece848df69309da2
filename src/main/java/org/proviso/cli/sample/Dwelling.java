package org.proviso.cli.sample;

import org.proviso.core.StreetSegment;

/** A house or apartment of the county: its number, street segment, unit, and the precinct part it lies in. */
record Dwelling(int number, String unit, StreetSegment segment, Part part) {

    String street() {
        return segment.street();
    }

    String line() {
        return number + " " + segment.street();
    }
}
