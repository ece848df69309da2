package org.proviso.canvass.sheet;

import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.proviso.access.StaffList;
import org.proviso.canvass.CanvassPlace;
import org.proviso.canvass.Figure;
import org.proviso.canvass.PlaceFigures;
import org.proviso.core.Transmittal;
import org.proviso.core.UserName;
import org.proviso.ui.UsDates;

/** Writes the cells of a row from the figures of its place, what people noted and what its return gives. */
final class SheetReader {

    private static final Set<Figure> OF_RETURNS = Set.of(
            Figure.SUPPLIED,
            Figure.ISSUED,
            Figure.SPOILED,
            Figure.UNUSED,
            Figure.SENT_BACK,
            Figure.SCANNED_IN_ERROR,
            Figure.CHANGED_SEALS,
            Figure.LOOSE_BALLOTS);

    private final Map<String, SheetStore.Note> newest = new HashMap<>();
    private final Map<String, Map<Figure, Integer>> returns = new HashMap<>();
    private final Map<UserName, String> names = new HashMap<>();
    private final StaffList staff;
    private final ZoneId zone;

    SheetReader(List<SheetStore.Note> notes, List<Transmittal> transmittals, StaffList staff, ZoneId zone) {
        this.staff = staff;
        this.zone = zone;
        notes.forEach(note -> newest.put(key(note.place(), note.hours().code(), note.figure()), note));
        transmittals.forEach(this::take);
    }

    private static String key(String place, String hours, Figure figure) {
        return place + "|" + hours + "|" + figure.code();
    }

    private void take(Transmittal sent) {
        Map<Figure, Integer> sums = returns.computeIfAbsent(sent.votingLocation(), any -> new EnumMap<>(Figure.class));
        add(sums, Figure.SUPPLIED, sent.supplied());
        add(sums, Figure.ISSUED, sent.issued());
        add(sums, Figure.SPOILED, sent.spoiled());
        add(sums, Figure.UNUSED, sent.unused());
        add(sums, Figure.SENT_BACK, sent.returned());
        add(sums, Figure.SCANNED_IN_ERROR, sent.scannedInError());
    }

    private static void add(Map<Figure, Integer> sums, Figure figure, @Nullable Integer number) {
        if (number != null) {
            sums.merge(figure, number, Integer::sum);
        }
    }

    SheetRow row(CanvassPlace where, PlaceFigures figures) {
        Map<Figure, SheetCell> cells = new EnumMap<>(Figure.class);
        for (Figure figure : Figure.values()) {
            cells.put(figure, cell(where, figure, figures.figures().get(figure)));
        }
        return new SheetRow(where, cells);
    }

    private SheetCell cell(CanvassPlace where, Figure figure, @Nullable Integer number) {
        SheetStore.Note note = newest.get(key(where.name(), where.hours().code(), figure));
        if (note != null) {
            return new SheetCell(figure, number, FigureSource.NOTE, words(note), note.noteNo());
        }
        if (number == null) {
            return new SheetCell(figure, null, FigureSource.NOBODY, "not noted yet", 0);
        }
        boolean returned = OF_RETURNS.contains(figure) && returns.containsKey(where.name());
        return returned
                ? new SheetCell(figure, number, FigureSource.RETURN, "from the location's return", 0)
                : new SheetCell(figure, number, FigureSource.PROGRAM, "counted by the program", 0);
    }

    /** Who noted it, when, what stood there before, where it is from; and the return's own number, which stays on file. */
    private String words(SheetStore.Note note) {
        String before = note.numberBefore() == null ? "" : ", " + note.numberBefore() + " before";
        Integer returned = returns.getOrDefault(note.place(), Map.of()).get(note.figure());
        String onReturn = returned == null ? "" : " The return says " + returned + ".";
        return "noted by " + names.computeIfAbsent(note.notedBy(), this::name) + ", "
                + UsDates.near(LocalDateTime.ofInstant(note.notedAt(), zone)) + before + ". Source: " + note.because()
                + onReturn;
    }

    private String name(UserName userName) {
        return staff.user(userName).map(user -> user.fullName()).orElse(userName.value());
    }
}
