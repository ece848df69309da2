package org.proviso.notices.ui;

import com.vaadin.flow.component.datetimepicker.DateTimePicker;
import org.proviso.notices.Attempt;
import org.proviso.notices.LogCameBack;
import org.proviso.notices.Logged;
import org.proviso.notices.Notice;
import org.proviso.notices.NoticeService;
import org.proviso.ui.ActButton;
import org.proviso.ui.Asking;
import org.proviso.ui.Said;
import org.proviso.ui.Workplace;

/** Logs returned mail. */
final class CameBackSheet {

    private final NoticeService notices;
    private final Workplace workplace;
    private final Notice notice;
    private final Attempt attempt;
    private final Runnable after;

    CameBackSheet(NoticeService notices, Workplace workplace, Notice notice, Attempt attempt, Runnable after) {
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
        Asking[] sheet = new Asking[1];
        sheet[0] = new Asking("Log returned mail", "Log returned mail", () -> {
            if (at.getValue() == null) {
                return sheet[0].refuse("Enter the date and time.");
            }
            Logged logged = notices.logCameBack(
                    new LogCameBack(notice.key(), notice.number(), notice.version(), attempt.number(), at.getValue()));
            if (logged instanceof Logged.Refused refused) {
                return sheet[0].refuse(refused.refusal().words());
            }
            after.run();
            Said.done("Returned mail logged. The voter still counts as notified. Try another way.");
            return true;
        });
        sheet[0].with("The voter still counts as notified. Try to reach the voter another way, and log that too.")
                .with(at)
                .open();
    }
}
