package org.proviso.ui.frame;

import java.time.LocalDate;
import java.time.ZoneId;
import org.proviso.core.ElectionId;
import org.proviso.ui.UsDates;

/** An election as every page names it. */
public record ElectionLine(ElectionId id, String county, String kind, LocalDate date, ZoneId zone, boolean closed) {

    /** {@code Tamarack County · General, November 3, 2026}. */
    public String words() {
        return county + " · " + kind + ", " + UsDates.day(date) + (closed ? " (closed)" : "");
    }
}
