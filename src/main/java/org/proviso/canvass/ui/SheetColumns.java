package org.proviso.canvass.ui;

import java.util.List;
import org.proviso.canvass.Figure;

/** The columns of the sheet of balances, in the order of a location's closing form, and the words over them. */
final class SheetColumns {

    static final List<Figure> OF_LOCATIONS = List.of(
            Figure.SUPPLIED,
            Figure.ISSUED,
            Figure.SPOILED,
            Figure.UNUSED,
            Figure.MISSING,
            Figure.SCANNED_IN_ERROR,
            Figure.SENT_BACK,
            Figure.RECEIVED,
            Figure.UNACCOUNTED,
            Figure.COUNTED,
            Figure.COUNTED_IN_PART,
            Figure.REJECTED,
            Figure.SENT_ON,
            Figure.ENDED,
            Figure.PENDING,
            Figure.HELD_BY_LAW,
            Figure.CHANGED_SEALS,
            Figure.LOOSE_BALLOTS);

    static final List<Figure> OF_COUNTY = List.of(
            Figure.EMPTY,
            Figure.HANDED_OFF,
            Figure.TABULATED,
            Figure.REMADE,
            Figure.CREDITED,
            Figure.CURE_DEFECTS,
            Figure.ASK_NOTICES,
            Figure.OUTCOME_NOTICES);

    private SheetColumns() {}

    static String heading(Figure figure) {
        return switch (figure) {
            case SUPPLIED -> "Supplied";
            case UNUSED -> "Unused";
            case MISSING -> "Missing";
            case RECEIVED -> "Received";
            case UNACCOUNTED -> "Absent, ex\u00adplained";
            case SENT_ON -> "Sent on";
            case ENDED -> "Ended";
            case PENDING -> "Un\u00addecided";
            case HELD_BY_LAW -> "Held by law";
            case CHANGED_SEALS -> "Changed seals";
            case LOOSE_BALLOTS -> "Loose ballots";
            case EMPTY -> "Empty";
            case HANDED_OFF -> "Handed off";
            case CREDITED -> "Credit for voting";
            case CURE_DEFECTS -> "To cure";
            case ASK_NOTICES -> "Notices to cure";
            case OUTCOME_NOTICES -> "Outcome notices";
            default ->
                figure.done().substring(0, 1).toUpperCase(java.util.Locale.ROOT)
                        + figure.done().substring(1);
        };
    }
}
