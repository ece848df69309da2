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

/** Logs that a voter was told: how, and when on the county's clock. */
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
        return new ActButton("Log that the voter was told", "L").first().does(this::ask);
    }

    private void ask() {
        RadioButtonGroup<NoticeChannel> channel = new RadioButtonGroup<>("How");
        channel.setItems(NoticeChannel.values());
        channel.setItemLabelGenerator(one -> DateWords.code(one.code()));
        channel.setValue(NoticeChannel.MAIL);
        DateTimePicker at = new DateTimePicker("When it was sent, or the voter was reached");
        at.setLocale(java.util.Locale.US);
        at.setValue(workplace.now().withSecond(0).withNano(0));
        ActDialog[] sheet = new ActDialog[1];
        sheet[0] = new ActDialog("Log that the voter was told", "Log it", () -> {
            if (at.getValue() == null) {
                return sheet[0].refuse("Give the day and the time.");
            }
            NoticeLogResult logged = notices.logSent(new LogNoticeSent(
                    notice.key(), notice.number(), notice.version(), channel.getValue(), at.getValue()));
            if (logged instanceof NoticeLogResult.Refused refused) {
                return sheet[0].refuse(refused.refusal().words());
            }
            after.run();
            MessageLine.done("Logged: the voter of envelope " + notice.key().envelopeNo() + " was told.");
            return true;
        });
        sheet[0].with("Of several attempts the earliest decides. What is logged is recorded for good.")
                .with(channel, at)
                .open();
    }
}
