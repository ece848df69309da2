package org.proviso.ui.frame;

import java.util.List;

/** The elections that the office holds, the newest first; the room of elections answers. */
public interface OfficeElections {

    List<ElectionLine> all();

    /** A line for the top of every page of a demonstration, empty in an office. */
    String demonstration();
}
