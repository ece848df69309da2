package org.proviso.notices.ui;

import com.vaadin.flow.component.datetimepicker.DateTimePicker;
import org.proviso.notices.LogReturnedMail;
import org.proviso.notices.Notice;
import org.proviso.notices.NoticeAttempt;
import org.proviso.notices.NoticeLogResult;
import org.proviso.notices.NoticeService;
import org.proviso.ui.MessageLine;
import org.proviso.ui.field.ActButton;
import org.proviso.ui.field.ActDialog;
import org.proviso.ui.frame.WorkingElection;

/** Logs that a letter came back. */
final class ReturnedMailSheet {

    private final NoticeService notices;
    private final WorkingElection workplace;
    private final Notice notice;
    private final NoticeAttempt attempt;
    private final Runnable after;

    ReturnedMailSheet(
            NoticeService notices, WorkingElection workplace, Notice notice, NoticeAttempt attempt, Runnable after) {
        this.notices = notices;
        this.workplace = workplace;
        this.notice = notice;
        this.attempt = attempt;
        this.after = after;
    }

    ActButton button() {
        return new ActButton("It came back").quiet().does(this::ask);
    }

    private void ask() {
        DateTimePicker at = new DateTimePicker("When it came back");
        at.setLocale(java.util.Locale.US);
        at.setValue(workplace.now().withSecond(0).withNano(0));
        ActDialog[] sheet = new ActDialog[1];
        sheet[0] = new ActDialog("The letter came back", "Log it", () -> {
            if (at.getValue() == null) {
                return sheet[0].refuse("Give the day and the time.");
            }
            NoticeLogResult logged = notices.logCameBack(new LogReturnedMail(
                    notice.key(), notice.number(), notice.version(), attempt.number(), at.getValue()));
            if (logged instanceof NoticeLogResult.Refused refused) {
                return sheet[0].refuse(refused.refusal().words());
            }
            after.run();
            MessageLine.done("Logged: the letter came back. The voter still counts as told; try another way.");
            return true;
        });
        sheet[0].with("The voter still counts as told. Try to reach them another way, and log that too.")
                .with(at)
                .open();
    }
}
