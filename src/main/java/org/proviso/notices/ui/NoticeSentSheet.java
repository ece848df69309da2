package org.proviso.notices.ui;

import com.vaadin.flow.component.datetimepicker.DateTimePicker;
import com.vaadin.flow.component.radiobutton.RadioButtonGroup;
import org.proviso.core.adjudication.finding.DateWords;
import org.proviso.notices.LogNoticeSent;
import org.proviso.notices.Notice;
import org.proviso.notices.NoticeChannel;
import org.proviso.notices.NoticeLogResult;
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
        channel.setItemLabelGenerator(one -> DateWords.code(one.code()));
        channel.setValue(NoticeChannel.MAIL);
        DateTimePicker at = new DateTimePicker("Date and time sent, or voter reached");
        at.setLocale(java.util.Locale.US);
        at.setValue(workplace.now().withSecond(0).withNano(0));
        ActDialog[] sheet = new ActDialog[1];
        sheet[0] = new ActDialog("Log notice", "Log notice", () -> {
            if (at.getValue() == null) {
                return sheet[0].refuse("Enter the date and time.");
            }
            NoticeLogResult logged = notices.logSent(new LogNoticeSent(
                    notice.key(), notice.number(), notice.version(), channel.getValue(), at.getValue()));
            if (logged instanceof NoticeLogResult.Refused refused) {
                return sheet[0].refuse(refused.refusal().words());
            }
            after.run();
            MessageLine.done("Logged: the voter of envelope " + notice.key().envelopeNo() + " was notified.");
            return true;
        });
        sheet[0].with("The earliest attempt sets the notice date. A log entry cannot be removed.")
                .with(channel, at)
                .open();
    }
}
