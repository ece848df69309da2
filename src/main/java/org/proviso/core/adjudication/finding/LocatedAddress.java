package org.proviso.core.adjudication.finding;

import java.util.List;
import org.proviso.core.PrecinctId;

/** What the street file says of an address: the precinct parts it may lie in, and whether the place is in the county. */
public record LocatedAddress(Place place, List<PrecinctId> parts, String words) {

    /** How far the street file knows the address. */
    public enum Place {
        FOUND,
        IN_COUNTY_NOT_FOUND,
        OUT_OF_COUNTY,
        NO_ADDRESS
    }

    /** The part, where there is only one. */
    public boolean isOnly() {
        return parts.size() == 1;
    }
}
