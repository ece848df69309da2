package org.proviso.notices.ui;

import com.vaadin.flow.component.datetimepicker.DateTimePicker;
import com.vaadin.flow.component.radiobutton.RadioButtonGroup;
import org.proviso.core.adjudication.finding.Words;
import org.proviso.notices.Channel;
import org.proviso.notices.LogSent;
import org.proviso.notices.Logged;
import org.proviso.notices.Notice;
import org.proviso.notices.NoticeService;
import org.proviso.ui.Said;
import org.proviso.ui.field.ActButton;
import org.proviso.ui.field.Asking;
import org.proviso.ui.frame.Workplace;

/** Logs that a voter was told: how, and when on the county's clock. */
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
        return new ActButton("Log that the voter was told", "L").first().does(this::ask);
    }

    private void ask() {
        RadioButtonGroup<Channel> channel = new RadioButtonGroup<>("How");
        channel.setItems(Channel.values());
        channel.setItemLabelGenerator(one -> Words.code(one.code()));
        channel.setValue(Channel.MAIL);
        DateTimePicker at = new DateTimePicker("When it was sent, or the voter was reached");
        at.setLocale(java.util.Locale.US);
        at.setValue(workplace.now().withSecond(0).withNano(0));
        Asking[] sheet = new Asking[1];
        sheet[0] = new Asking("Log that the voter was told", "Log it", () -> {
            if (at.getValue() == null) {
                return sheet[0].refuse("Give the day and the time.");
            }
            Logged logged = notices.logSent(
                    new LogSent(notice.key(), notice.number(), notice.version(), channel.getValue(), at.getValue()));
            if (logged instanceof Logged.Refused refused) {
                return sheet[0].refuse(refused.refusal().words());
            }
            after.run();
            Said.done("Logged: the voter of envelope " + notice.key().envelopeNo() + " was told.");
            return true;
        });
        sheet[0].with("Of several attempts the earliest decides. What is logged is recorded for good.")
                .with(channel, at)
                .open();
    }
}
