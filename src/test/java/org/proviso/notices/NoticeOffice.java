package org.proviso.notices;

import static org.proviso.core.act.ActResults.accepted;
import static org.proviso.journey.Office.as;

import java.time.LocalDateTime;
import java.util.List;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.act.ActResult;
import org.proviso.core.rules.Ask;
import org.proviso.database.OfficeTime;
import org.proviso.database.TestOffice;
import org.proviso.journey.Deciding;
import org.proviso.journey.Primary;

/**
 * The sample primary of August 4, 2026, loaded at noon of the next day. Under the sample's rules a notice is due by the
 * end of August 6, identification may be brought until August 11 at 5 pm. Jon of intake prints cure letters, Carl who
 * supervises prints all.
 */
record NoticeOffice(Primary primary) {

    static final LocalDateTime NOON = LocalDateTime.of(2026, 8, 5, 12, 0);
    static final LocalDateTime NOTICE_DUE = LocalDateTime.of(2026, 8, 6, 23, 59, 59);
    static final LocalDateTime LAST_MOMENT = LocalDateTime.of(2026, 8, 11, 17, 0);

    static NoticeOffice loaded(TestOffice services) {
        OfficeTime.set(services, NOON);
        return new NoticeOffice(Primary.loaded(services));
    }

    static EnvelopeKey key(EnvelopeNumber envelopeNo) {
        return new EnvelopeKey(new ElectionId(Primary.ID), envelopeNo);
    }

    NoticeService service() {
        return primary.office().the(NoticeService.class);
    }

    List<Notice> of(EnvelopeKey key) {
        return as("carl", () -> service().notices(key));
    }

    Notice ask(EnvelopeKey key, Ask ask) {
        return of(key).stream()
                .filter(notice -> notice.asksFor(ask))
                .findFirst()
                .orElseThrow();
    }

    Notice outcome(EnvelopeKey key) {
        return of(key).stream()
                .filter(notice -> notice.kind() == NoticeKind.OUTCOME && !notice.isWithdrawn())
                .findFirst()
                .orElseThrow();
    }

    ActResult<Notice> log(String who, Notice notice, NoticeChannel channel, LocalDateTime sentAt) {
        return as(
                who,
                () -> service()
                        .logSent(new LogNoticeSent(notice.key(), notice.number(), notice.version(), channel, sentAt)));
    }

    Notice logged(String who, Notice notice, LocalDateTime sentAt) {
        return accepted(log(who, notice, NoticeChannel.MAIL, sentAt));
    }

    String letter(Notice notice) {
        return as("carl", () -> service().letter(notice.key(), notice.number())).text();
    }

    void at(LocalDateTime moment) {
        OfficeTime.set(primary.office().services(), moment);
    }

    Deciding deciding() {
        return new Deciding(primary);
    }
}
