package org.proviso.notices.ui;

import com.vaadin.flow.component.radiobutton.RadioButtonGroup;
import org.proviso.core.act.ActResult;
import org.proviso.core.adjudication.finding.DateWords;
import org.proviso.notices.LogNoticeSent;
import org.proviso.notices.Notice;
import org.proviso.notices.NoticeChannel;
import org.proviso.notices.NoticeService;
import org.proviso.ui.MessageLine;
import org.proviso.ui.field.ActButton;
import org.proviso.ui.field.ActDialog;
import org.proviso.ui.frame.WorkingElection;

/** Logs that a voter was notified: how, and when (county time). */
final class NoticeSentSheet {

    private final NoticeService notices;
    private final WorkingElection workplace;
    private final Notice notice;
    private final Runnable after;

    NoticeSentSheet(NoticeService notices, WorkingElection workplace, Notice notice, Runnable after) {
        this.notices = notices;
        this.workplace = workplace;
        this.notice = notice;
        this.after = after;
    }

    ActButton button() {
        return new ActButton("Log notice", "L").first().does(this::ask);
    }

    private void ask() {
        RadioButtonGroup<NoticeChannel> channel = new RadioButtonGroup<>("How");
        channel.setItems(NoticeChannel.values());
        channel.setItemLabelGenerator(noticeChannel -> DateWords.code(noticeChannel.code()));
        channel.setValue(NoticeChannel.MAIL);
        MomentField at = new MomentField("Date and time sent, or voter reached", "sentAt", workplace.now());
        ActDialog[] sheet = new ActDialog[1];
        sheet[0] = new ActDialog("Log notice", "Log notice", () -> {
            if (at.getValue() == null) {
                return at.refuse("Enter the date and time.");
            }
            ActResult<Notice> logged = notices.logSent(new LogNoticeSent(
                    notice.key(), notice.number(), notice.version(), channel.getValue(), at.getValue()));
            if (logged instanceof ActResult.Refused<Notice> refused) {
                return at.refuse(refused, sheet[0]);
            }
            after.run();
            MessageLine.done("Logged: the voter of envelope " + notice.key().envelopeNo() + " was notified.");
            return true;
        });
        sheet[0].with(
                        "The earliest attempt sets the notice date. A log entry made by mistake can be taken back, with a reason.")
                .with(channel, at)
                .open();
    }
}
