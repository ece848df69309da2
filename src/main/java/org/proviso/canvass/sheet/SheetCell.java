package org.proviso.canvass.sheet;

import org.jspecify.annotations.Nullable;
import org.proviso.canvass.Figure;

/**
 * One figure of one place as it stands: the number (null while nobody has supplied it), where it is from in a code and in
 * words, and the number of the newest note about it (0 for none), which says later whether it changed meanwhile.
 */
public record SheetCell(Figure figure, @Nullable Integer number, FigureSource source, String words, int noteNo) {

    /** The number as it is typed; empty where there is none. */
    public String text() {
        return number == null ? "" : String.valueOf(number);
    }

    boolean isAsSeen(TypedFigure typed) {
        return noteNo == typed.seenNote() && text().equals(typed.seen() == null ? "" : String.valueOf(typed.seen()));
    }
}
