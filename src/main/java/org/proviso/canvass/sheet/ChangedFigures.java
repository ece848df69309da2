package org.proviso.canvass.sheet;

import java.util.List;
import java.util.stream.Collectors;
import org.springframework.dao.OptimisticLockingFailureException;

/** Some figures are not any more what the person saw who typed over them. Nothing was saved. */
public final class ChangedFigures extends OptimisticLockingFailureException {

    private static final int NAMED = 3;

    private final transient List<TypedFigure> figures;

    ChangedFigures(List<TypedFigure> figures) {
        super(words(figures));
        this.figures = List.copyOf(figures);
    }

    /** The figures as they were typed. */
    public List<TypedFigure> figures() {
        return figures;
    }

    private static String words(List<TypedFigure> figures) {
        String more = figures.size() > NAMED ? ", and " + (figures.size() - NAMED) + " more" : "";
        return "Changed: "
                + figures.stream()
                        .limit(NAMED)
                        .map(typed -> typed.place() + ", " + typed.figure().done())
                        .collect(Collectors.joining("; "))
                + more + ".";
    }
}
