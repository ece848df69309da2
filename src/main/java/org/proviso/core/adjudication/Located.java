package org.proviso.core.adjudication;

import java.util.List;

/** What the street file says of an address: the precinct parts it may lie in, and whether the place is in the county. */
public record Located(Place place, List<Part> parts, String words) {

    /** A precinct, or one split of it. */
    public record Part(String precinct, String split) {

        /** As it reads: {@code precinct 14}, {@code precinct 14 split B}. */
        public String words() {
            return "precinct " + precinct + (split.isEmpty() ? "" : " split " + split);
        }
    }

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
