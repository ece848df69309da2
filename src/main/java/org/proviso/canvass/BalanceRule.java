package org.proviso.canvass;

import static org.proviso.canvass.Figure.ASK_NOTICES;
import static org.proviso.canvass.Figure.BY_ISSUE_REASON;
import static org.proviso.canvass.Figure.BY_LOCATION;
import static org.proviso.canvass.Figure.BY_REJECTION_REASON;
import static org.proviso.canvass.Figure.BY_STATE;
import static org.proviso.canvass.Figure.CHANGED_SEALS;
import static org.proviso.canvass.Figure.COUNTED;
import static org.proviso.canvass.Figure.COUNTED_IN_PART;
import static org.proviso.canvass.Figure.CREDITED;
import static org.proviso.canvass.Figure.CURE_DEFECTS;
import static org.proviso.canvass.Figure.EMPTY;
import static org.proviso.canvass.Figure.ENDED;
import static org.proviso.canvass.Figure.HANDED_OFF;
import static org.proviso.canvass.Figure.HELD_BY_LAW;
import static org.proviso.canvass.Figure.ISSUED;
import static org.proviso.canvass.Figure.LOOSE_BALLOTS;
import static org.proviso.canvass.Figure.MISSING;
import static org.proviso.canvass.Figure.OUTCOME_NOTICES;
import static org.proviso.canvass.Figure.PENDING;
import static org.proviso.canvass.Figure.RECEIVED;
import static org.proviso.canvass.Figure.REJECTED;
import static org.proviso.canvass.Figure.REMADE;
import static org.proviso.canvass.Figure.SCANNED_IN_ERROR;
import static org.proviso.canvass.Figure.SENT_BACK;
import static org.proviso.canvass.Figure.SENT_ON;
import static org.proviso.canvass.Figure.SPOILED;
import static org.proviso.canvass.Figure.SUPPLIED;
import static org.proviso.canvass.Figure.TABULATED;
import static org.proviso.canvass.Figure.UNACCOUNTED;
import static org.proviso.canvass.Figure.UNUSED;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.proviso.core.Code;

/**
 * What must be equal, to the last envelope: a figure, and the sum of others less those taken off (common practice of
 * the trade). {@code number} is the one under which the office's list has it.
 */
public enum BalanceRule implements Code {
    STOCK(1, Level.LOCATION, SUPPLIED, List.of(ISSUED, SPOILED, UNUSED, MISSING, SCANNED_IN_ERROR)),
    ISSUED_ARRIVED(2, Level.LOCATION, ISSUED, List.of(RECEIVED, UNACCOUNTED)),
    SENT_BACK_ARRIVED(2, Level.LOCATION, SENT_BACK, List.of(RECEIVED)),
    EVERY_ONE_HAS_AN_OUTCOME(
            3, Level.LOCATION, RECEIVED, List.of(COUNTED, COUNTED_IN_PART, REJECTED, SENT_ON, ENDED, PENDING)),
    NOTHING_PENDING(3, Level.LOCATION, PENDING, List.of(HELD_BY_LAW)),
    ISSUE_REASONS(4, Level.LOCATION, RECEIVED, List.of(BY_ISSUE_REASON)),
    STATES(4, Level.LOCATION, RECEIVED, List.of(BY_STATE)),
    LOCATIONS(4, Level.COUNTY, RECEIVED, List.of(BY_LOCATION)),
    REJECTION_REASONS(5, Level.LOCATION, REJECTED, List.of(BY_REJECTION_REASON)),
    BALLOTS(6, Level.COUNTY, HANDED_OFF, List.of(COUNTED, COUNTED_IN_PART), List.of(EMPTY)),
    TABULATOR(6, Level.COUNTY, TABULATED, List.of(HANDED_OFF)),
    REMAKES(7, Level.COUNTY, REMADE, List.of(COUNTED_IN_PART)),
    CREDIT(7, Level.COUNTY, CREDITED, List.of(COUNTED, COUNTED_IN_PART)),
    ASKS(9, Level.COUNTY, ASK_NOTICES, List.of(CURE_DEFECTS)),
    OUTCOMES_TOLD(9, Level.COUNTY, OUTCOME_NOTICES, List.of(REJECTED, COUNTED_IN_PART)),
    SEALS(11, Level.LOCATION, CHANGED_SEALS, List.of()),
    NOTHING_LOOSE(12, Level.LOCATION, LOOSE_BALLOTS, List.of());

    /** Sums of the program's own books, and votes that nobody has decided: no explanation may stand in for these. */
    private static final Set<BalanceRule> NEVER_EXPLAINED =
            EnumSet.of(EVERY_ONE_HAS_AN_OUTCOME, NOTHING_PENDING, STATES, LOCATIONS, REJECTION_REASONS);

    /** Where an identity is checked: in each voting location and the county, or in the county alone. */
    private enum Level {
        LOCATION,
        COUNTY
    }

    private final int number;
    private final Level level;
    private final Figure whole;
    private final List<Figure> added;
    private final List<Figure> takenOff;

    BalanceRule(int number, Level level, Figure whole, List<Figure> added) {
        this(number, level, whole, added, List.of());
    }

    BalanceRule(int number, Level level, Figure whole, List<Figure> added, List<Figure> takenOff) {
        this.number = number;
        this.level = level;
        this.whole = whole;
        this.added = added;
        this.takenOff = takenOff;
    }

    /**
     * From 1 to 12; the eighth is that all of them hold apart for extended hours, the tenth is {@link DailyProgressRule}.
     * The last two are what a return reports and nothing can be added up to: they are always explained.
     */
    public int number() {
        return number;
    }

    /** Whether a single voting location can be held to it. */
    public boolean isOfLocations() {
        return level == Level.LOCATION;
    }

    /** Whether a signed explanation may take the place of agreeing. */
    public boolean mayBeExplained() {
        return !NEVER_EXPLAINED.contains(this);
    }

    Figure whole() {
        return whole;
    }

    List<Figure> added() {
        return added;
    }

    List<Figure> takenOff() {
        return takenOff;
    }

    /** Those of its figures that a person has to supply. */
    public List<Figure> toBeNoted() {
        return figures().stream().filter(Figure::isNoted).toList();
    }

    /** Every figure it needs. */
    public List<Figure> figures() {
        List<Figure> figures = new ArrayList<>(List.of(whole));
        figures.addAll(added);
        figures.addAll(takenOff);
        return figures;
    }
}
