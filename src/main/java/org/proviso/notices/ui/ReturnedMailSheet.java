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

/** Logs returned mail. */
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
        return new ActButton("Log returned mail").quiet().does(this::ask);
    }

    private void ask() {
        DateTimePicker at = new DateTimePicker("Date and time it came back");
        at.setLocale(java.util.Locale.US);
        at.setValue(workplace.now().withSecond(0).withNano(0));
        ActDialog[] sheet = new ActDialog[1];
        sheet[0] = new ActDialog("Log returned mail", "Log returned mail", () -> {
            if (at.getValue() == null) {
                return sheet[0].refuse("Enter the date and time.");
            }
            NoticeLogResult logged = notices.logCameBack(new LogReturnedMail(
                    notice.key(), notice.number(), notice.version(), attempt.number(), at.getValue()));
            if (logged instanceof NoticeLogResult.Refused refused) {
                return sheet[0].refuse(refused.refusal().words());
            }
            after.run();
            MessageLine.done("Returned mail logged. The voter still counts as notified. Try another way.");
            return true;
        });
        sheet[0].with("The voter still counts as notified. Try to reach the voter another way, and log that too.")
                .with(at)
                .open();
    }
}
