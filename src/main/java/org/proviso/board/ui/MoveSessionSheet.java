package org.proviso.board.ui;

import com.vaadin.flow.component.datetimepicker.DateTimePicker;
import com.vaadin.flow.component.textfield.TextField;
import java.time.Duration;
import java.util.Locale;
import org.proviso.board.BoardSession;
import org.proviso.board.MoveSession;
import org.proviso.ui.field.ActDialog;

/** Calls a session that is not open yet for another time or place. */
final class MoveSessionSheet {

    private final BoardServices room;
    private final BoardActRunner steps;
    private final BoardSession session;
    private final DateTimePicker when = new DateTimePicker("Date and time (county time)");
    private final TextField place = new TextField("Place");
    private final ActDialog sheet = new ActDialog("Move the session", "Move session", this::move);

    MoveSessionSheet(BoardServices room, BoardActRunner steps, BoardSession session) {
        this.room = room;
        this.steps = steps;
        this.session = session;
        when.setLocale(Locale.US);
        when.setDateAriaLabel("Date");
        when.setTimeAriaLabel("Time");
        when.setStep(Duration.ofMinutes(15));
        when.setValue(session.calledFor());
        place.setValue(session.place());
        place.setMaxLength(300);
        sheet.addClassName("board-sheet");
        sheet.with(
                        "Deadlines that run to the board's meeting move with it. Voters who were told another date are listed"
                                + " on the Notices page. You must post any public notice the law requires.")
                .with(when, place);
    }

    void open() {
        sheet.open();
    }

    private boolean move() {
        if (when.getValue() == null) {
            return ActDialog.refuse(when, "Enter the date and time.");
        }
        MoveSession to = new MoveSession(session.key(), session.version(), when.getValue(), place.getValue());
        return steps.sheet(() -> room.sessions().moveSession(to), "The session is moved.")
                .map(sheet::refuse)
                .orElse(true);
    }
}
