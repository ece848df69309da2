package org.proviso.journey;

import static org.proviso.core.act.ActResults.accepted;
import static org.proviso.journey.Office.as;

import java.time.LocalDateTime;
import java.util.List;
import org.proviso.core.ElectionId;
import org.proviso.core.UserName;
import org.proviso.notices.DueNotice;
import org.proviso.notices.LogNoticeSent;
import org.proviso.notices.NoticeChannel;
import org.proviso.notices.NoticeKind;
import org.proviso.notices.NoticeService;

/** The letters of an office: every notice that is due goes out and is logged. */
final class Telling {

    private final Office office;
    private final String election;

    Telling(Office office, String election) {
        this.office = office;
        this.election = election;
    }

    /** Sends what is due of that kind at that moment; how many letters. */
    int send(NoticeKind kind, UserName by, LocalDateTime when) {
        NoticeService notices = office.the(NoticeService.class);
        List<DueNotice> due = as(by.value(), () -> notices.due(new ElectionId(election))).stream()
                .filter(dueNotice -> dueNotice.notice().kind() == kind)
                .toList();
        for (DueNotice dueNotice : due) {
            accepted(as(
                    by.value(),
                    () -> notices.logSent(new LogNoticeSent(
                            dueNotice.notice().key(),
                            dueNotice.notice().number(),
                            dueNotice.notice().version(),
                            NoticeChannel.MAIL,
                            when))));
        }
        return due.size();
    }
}
