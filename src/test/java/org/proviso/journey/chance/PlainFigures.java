package org.proviso.journey.chance;

import java.util.EnumMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.proviso.canvass.CanvassFigures;
import org.proviso.canvass.Figure;
import org.proviso.core.deciding.DecisionOutcome;

/** What the figures must be: counted up and down with every act, and knowing nothing else. */
final class PlainFigures {

    private static final Figure[] WATCHED = {
        Figure.RECEIVED,
        Figure.COUNTED,
        Figure.COUNTED_IN_PART,
        Figure.REJECTED,
        Figure.SENT_ON,
        Figure.ENDED,
        Figure.PENDING,
        Figure.EMPTY,
        Figure.HANDED_OFF,
        Figure.REMADE
    };

    private final Map<Figure, Integer> numbers = new EnumMap<>(Figure.class);

    PlainFigures(int loaded) {
        for (Figure figure : WATCHED) {
            numbers.put(figure, 0);
        }
        received(loaded);
    }

    void received(int envelopes) {
        add(Figure.RECEIVED, envelopes);
        add(Figure.PENDING, envelopes);
    }

    /** An undecided envelope has this end now. */
    void over(Figure end) {
        add(Figure.PENDING, -1);
        add(end, 1);
    }

    /** An envelope has this end now, whatever end it had before (null for none). */
    void settled(@Nullable Figure before, Figure end) {
        if (before != null) {
            undecidedAgain(before);
        }
        over(end);
    }

    /** An envelope with this end is undecided again. */
    void undecidedAgain(Figure end) {
        add(end, -1);
        add(Figure.PENDING, 1);
    }

    void add(Figure figure, int number) {
        numbers.merge(figure, number, Integer::sum);
    }

    static Figure of(DecisionOutcome outcome) {
        return switch (outcome) {
            case COUNT -> Figure.COUNTED;
            case COUNT_IN_PART -> Figure.COUNTED_IN_PART;
            case REJECT -> Figure.REJECTED;
        };
    }

    /** What differs from the office's own figures, both groups of hours together; empty where nothing does. */
    Map<Figure, String> differences(Iterable<CanvassFigures> accounts) {
        Map<Figure, String> differences = new EnumMap<>(Figure.class);
        for (Figure figure : WATCHED) {
            int office = 0;
            for (CanvassFigures hours : accounts) {
                office += hours.county().figures().getOrDefault(figure, 0);
            }
            if (office != numbers.getOrDefault(figure, 0)) {
                differences.put(figure, "the office has " + office + ", the acts make " + numbers.get(figure));
            }
        }
        return differences;
    }
}
