package org.proviso.canvass.sheet;

import org.proviso.core.Code;

/** Where a figure on the sheet is from. */
public enum FigureSource implements Code {
    /** The voting location's return gives it. */
    RETURN("return"),
    /** A supervisor noted it with its source. */
    NOTE("noted"),
    /** The program counts or adds it up. */
    PROGRAM(""),
    /** Nobody has supplied it yet. */
    NOBODY("");

    private final String words;

    FigureSource(String words) {
        this.words = words;
    }

    /** The word under the figure; empty where none is needed. */
    public String words() {
        return words;
    }
}
