package org.proviso.canvass;

import org.jspecify.annotations.Nullable;

/** Where figures are from: a voting location, or the county as a whole (null), each group of hours apart. */
public record CanvassPlace(@Nullable String votingLocation, VotingHours hours) {

    static CanvassPlace location(String votingLocation, VotingHours hours) {
        return new CanvassPlace(votingLocation, hours);
    }

    static CanvassPlace county(VotingHours hours) {
        return new CanvassPlace(null, hours);
    }

    public boolean isCounty() {
        return votingLocation == null;
    }

    /** Its name, as a figure is noted for it. */
    public String name() {
        return votingLocation == null ? CanvassService.COUNTY : votingLocation;
    }

    /** As it reads in a sentence: {@code Mill Pond Library}, {@code The county in extended hours}. */
    public String words() {
        return name() + hours.words();
    }
}
