package org.proviso.canvass.ui;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.proviso.canvass.CanvassPlace;
import org.proviso.canvass.Figure;
import org.proviso.canvass.VotingHours;
import org.proviso.canvass.sheet.SheetCell;
import org.proviso.canvass.sheet.SheetOfBalances;
import org.proviso.canvass.sheet.SheetRow;
import org.proviso.canvass.sheet.TypedFigure;

/** What was typed on the sheet and is not saved yet, also on rows that are not on the screen. */
final class SheetEntries implements Serializable {

    /** One box of the sheet. */
    record Box(String place, VotingHours hours, Figure figure) implements Serializable {

        static Box of(SheetRow row, Figure figure) {
            return new Box(row.where().name(), row.where().hours(), figure);
        }

        static Box of(TypedFigure typed) {
            return new Box(typed.place(), typed.hours(), typed.figure());
        }

        boolean isOf(CanvassPlace where) {
            return where.name().equals(place) && where.hours() == hours;
        }
    }

    private final Map<Box, String> typed = new LinkedHashMap<>();

    /** Takes what was typed; what stands there anyway is nothing typed. */
    void type(Box box, String text, SheetCell before) {
        if (text.equals(before.text())) {
            typed.remove(box);
        } else {
            typed.put(box, text);
        }
    }

    /** What is typed in a box; empty where nothing is. */
    Optional<String> text(Box box) {
        return Optional.ofNullable(typed.get(box));
    }

    /** What is wrong with the text of a box; empty where nothing is. */
    String problem(Box box) {
        String text = typed.get(box);
        return text == null || isNumber(text) ? "" : "Enter a whole number.";
    }

    private static boolean isNumber(String text) {
        return text.matches("\\d{1,6}");
    }

    boolean isWrong(@Nullable CanvassPlace of) {
        return typed.entrySet().stream().anyMatch(entry -> isWithin(entry.getKey(), of) && !isNumber(entry.getValue()));
    }

    boolean has(@Nullable CanvassPlace of) {
        return typed.keySet().stream().anyMatch(box -> isWithin(box, of));
    }

    int count() {
        return typed.size();
    }

    private static boolean isWithin(Box box, @Nullable CanvassPlace of) {
        return of == null || box.isOf(of);
    }

    /** The numbers typed in one row, or (null) on the whole sheet, each with what stood there. */
    List<TypedFigure> figures(SheetOfBalances sheet, @Nullable CanvassPlace of) {
        List<TypedFigure> figures = new ArrayList<>();
        for (SheetRow row : sheet.rows()) {
            for (Figure figure : row.typed()) {
                Box box = Box.of(row, figure);
                String text = typed.get(box);
                if (text != null && isWithin(box, of) && isNumber(text)) {
                    SheetCell cell = row.cell(figure);
                    figures.add(new TypedFigure(
                            box.place(), box.hours(), figure, cell.number(), cell.noteNo(), Integer.parseInt(text)));
                }
            }
        }
        return figures;
    }

    /** The figures are saved. */
    void forget(List<TypedFigure> saved) {
        saved.forEach(figure -> typed.remove(Box.of(figure)));
    }
}
