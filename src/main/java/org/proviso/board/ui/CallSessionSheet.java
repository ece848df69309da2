package org.proviso.board.ui;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.datetimepicker.DateTimePicker;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import org.proviso.board.BoardSession;
import org.proviso.board.BodyKind;
import org.proviso.board.CallSession;
import org.proviso.core.ElectionId;
import org.proviso.core.act.ActResult;
import org.proviso.ui.field.ActDialog;
import org.proviso.ui.frame.WorkingElection;

/** Calls a session for a time and place, and opens its page. */
final class CallSessionSheet {

    private final BoardServices room;
    private final ElectionId election;
    private final Select<BodyKind> body = new Select<>();
    private final DateTimePicker when = new DateTimePicker("Date and time (county time)");
    private final TextField place = new TextField("Place");
    private final ActDialog sheet = new ActDialog("Call a session", "Call session", this::call);

    CallSessionSheet(BoardServices room, WorkingElection workplace, List<BodyKind> bodies) {
        this.room = room;
        this.election = workplace.electionId();
        body.setLabel("Deciding body");
        body.setItems(bodies);
        body.setItemLabelGenerator(BodyKind::words);
        body.setValue(bodies.get(0));
        body.setVisible(bodies.size() > 1);
        when.setLocale(Locale.US);
        when.setDateAriaLabel("Date");
        when.setTimeAriaLabel("Time");
        when.setStep(Duration.ofMinutes(15));
        when.setValue(workplace.now().withSecond(0).withNano(0));
        place.setValue("Board room");
        place.setMaxLength(300);
        sheet.addClassName("board-sheet");
        sheet.with("Members will see the session on the Board page. You must post any public notice the law requires.")
                .with(body, when, place);
    }

    void open() {
        sheet.open();
    }

    private boolean call() {
        if (when.getValue() == null) {
            return ActDialog.refuse(when, "Enter the date and time.");
        }
        ActResult<BoardSession> called = room.sessions()
                .callSession(new CallSession(election, body.getValue(), when.getValue(), place.getValue()));
        if (called instanceof ActResult.Refused<BoardSession> refused) {
            return sheet.refuse(refused.words());
        }
        called.ifAccepted()
                .ifPresent(session -> UI.getCurrent()
                        .navigate("board/session/" + session.key().sessionNo()));
        return true;
    }
}
