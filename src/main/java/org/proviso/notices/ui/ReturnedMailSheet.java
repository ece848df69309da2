package org.proviso.notices.ui;

import org.proviso.core.act.ActResult;
import org.proviso.notices.LogReturnedMail;
import org.proviso.notices.Notice;
import org.proviso.notices.NoticeAttempt;
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
        MomentField at = new MomentField("Date and time it came back", "cameBackAt", workplace.now());
        ActDialog[] sheet = new ActDialog[1];
        sheet[0] = new ActDialog("Log returned mail", "Log returned mail", () -> {
            if (at.getValue() == null) {
                return at.refuse("Enter the date and time.");
            }
            ActResult<Notice> logged = notices.logCameBack(new LogReturnedMail(
                    notice.key(), notice.number(), notice.version(), attempt.number(), at.getValue()));
            if (logged instanceof ActResult.Refused<Notice> refused) {
                return at.refuse(refused, sheet[0]);
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
