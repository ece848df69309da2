package org.proviso.election;

import org.proviso.core.BetweenRooms;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;

/** Above which share of a list's rows two people decide to use it without those that could not be read. */
@BetweenRooms
@Component
public class SetAsideShare {

    private final double most;

    SetAsideShare(@Value("${proviso.set-aside-by-two-above-percent:0.1}") double percent) {
        this.most = percent / 100;
    }

    /** Whether so many rows beside so many that were read are more than one person may leave out. */
    public boolean needsTwo(int aside, int read) {
        return aside > most * ((double) aside + read);
    }
}
