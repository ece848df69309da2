package org.proviso.notices.ui;

import com.vaadin.flow.component.datetimepicker.DateTimePicker;
import com.vaadin.flow.component.radiobutton.RadioButtonGroup;
import org.proviso.core.adjudication.Words;
import org.proviso.notices.Channel;
import org.proviso.notices.LogSent;
import org.proviso.notices.Logged;
import org.proviso.notices.Notice;
import org.proviso.notices.NoticeService;
import org.proviso.ui.ActButton;
import org.proviso.ui.Asking;
import org.proviso.ui.Said;
import org.proviso.ui.Workplace;

/** Logs that a voter was notified: how, and when (county time). */
final class SentSheet {

    private final NoticeService notices;
    private final Workplace workplace;
    private final Notice notice;
    private final Runnable after;

    SentSheet(NoticeService notices, Workplace workplace, Notice notice, Runnable after) {
        this.notices = notices;
        this.workplace = workplace;
        this.notice = notice;
        this.after = after;
    }

    ActButton button() {
        return new ActButton("Log notice", "L").first().does(this::ask);
    }

    private void ask() {
        RadioButtonGroup<Channel> channel = new RadioButtonGroup<>("How");
        channel.setItems(Channel.values());
        channel.setItemLabelGenerator(one -> Words.code(one.code()));
        channel.setValue(Channel.MAIL);
        DateTimePicker at = new DateTimePicker("Date and time sent, or voter reached");
        at.setLocale(java.util.Locale.US);
        at.setValue(workplace.now().withSecond(0).withNano(0));
        Asking[] sheet = new Asking[1];
        sheet[0] = new Asking("Log notice", "Log notice", () -> {
            if (at.getValue() == null) {
                return sheet[0].refuse("Enter the date and time.");
            }
            Logged logged = notices.logSent(
                    new LogSent(notice.key(), notice.number(), notice.version(), channel.getValue(), at.getValue()));
            if (logged instanceof Logged.Refused refused) {
                return sheet[0].refuse(refused.refusal().words());
            }
            after.run();
            Said.done("Logged: the voter of envelope " + notice.key().envelopeNo() + " was notified.");
            return true;
        });
        sheet[0].with("The earliest attempt sets the notice date. A log entry cannot be removed.")
                .with(channel, at)
                .open();
    }
}
