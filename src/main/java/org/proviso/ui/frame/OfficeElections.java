package org.proviso.ui.frame;

import java.util.List;

/** The loaded elections, newest first. The election room supplies them. */
public interface OfficeElections {

    List<ElectionLine> all();

    /** A line for the top of every page in a demonstration; empty otherwise. */
    String demonstration();
}
