package org.proviso.review.ui.notes;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeDetails;
import com.vaadin.flow.component.html.Span;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.UserName;
import org.proviso.review.acts.NoteService;
import org.proviso.review.facts.CaseNote;
import org.proviso.ui.UsDates;
import org.proviso.ui.field.ActButton;

/** The notes that stand, each with what it said before it was corrected, and the button to write one. */
public final class NoteLines {

    private final EnvelopeKey key;
    private final ZoneId county;
    private final NoteService service;
    private final Runnable again;

    public NoteLines(EnvelopeKey key, ZoneId county, NoteService service, Runnable again) {
        this.key = key;
        this.county = county;
        this.service = service;
        this.again = again;
    }

    /** Lines for those that stand. {@code you} may correct your own; nobody, where that is null. */
    public List<Component> lines(List<CaseNote> notes, @Nullable UserName you) {
        List<Component> lines = new ArrayList<>();
        for (CaseNote note : notes) {
            if (!note.corrected()) {
                lines.add(line(note, notes, you));
            }
        }
        return lines;
    }

    /** Writes a new note. */
    public ActButton button() {
        return new ActButton("Write note")
                .quiet()
                .does(() -> new NoteSheet(key.envelopeNo(), "", words -> service.write(key, words), again).open());
    }

    private Div line(CaseNote note, List<CaseNote> all, @Nullable UserName you) {
        Div line = new Div(new Span(words(note)));
        Integer corrects = note.corrects();
        if (corrects != null) {
            Div before = new Div();
            for (Integer number = corrects;
                    number != null;
                    number = at(all, number).corrects()) {
                before.add(new Div(new Span(words(at(all, number)))));
            }
            NativeDetails was = new NativeDetails("corrected", before);
            was.addClassName("was");
            line.add(was);
        }
        if (note.writtenBy().equals(you)) {
            line.add(new ActButton("Correct note")
                    .quiet()
                    .does(() -> new NoteSheet(
                                    key.envelopeNo(),
                                    note.words(),
                                    words -> service.correct(key, note.number(), words),
                                    again)
                            .open()));
        }
        return line;
    }

    private static CaseNote at(List<CaseNote> all, Integer number) {
        return Objects.requireNonNull(all.get(number - 1), "notes are numbered from 1 on");
    }

    private String words(CaseNote note) {
        return "Note, " + UsDates.brief(LocalDateTime.ofInstant(note.writtenAt(), county)) + ", " + note.fullName()
                + ": \u201C" + note.words() + "\u201D";
    }
}
