package org.proviso.notices;

import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.core.act.ActResults.accepted;

import java.time.LocalDateTime;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.core.rules.Ask;
import org.proviso.database.OnBothDatabases;
import org.proviso.database.TestOffice;
import org.proviso.journey.Office;
import org.proviso.journey.Primary;
import org.proviso.review.news.DeadlineService;

/**
 * An ask that ran out rejects only with its notice logged as the pack demands. The three voters showed no
 * identification and bring none; all else of their cases is reviewed and in order.
 */
class AskThatRanOutTest {

    private static final EnvelopeKey NEVER_TOLD = NoticeOffice.key(new EnvelopeNumber("P-1009"));
    private static final EnvelopeKey TOLD_IN_TIME = NoticeOffice.key(new EnvelopeNumber("P-1016"));
    private static final EnvelopeKey TOLD_LATE = NoticeOffice.key(new EnvelopeNumber("P-1022"));

    @OnBothDatabases
    void only_the_voter_who_was_told_in_time_is_rejected_when_the_time_is_up(TestOffice services) {
        NoticeOffice office = NoticeOffice.loaded(services);
        for (EnvelopeKey key : new EnvelopeKey[] {NEVER_TOLD, TOLD_IN_TIME, TOLD_LATE}) {
            assertThat(office.primary().reviewing(key).work()).isEqualTo(Recommendation.WAIT_FOR_THE_VOTER);
        }
        office.at(LocalDateTime.of(2026, 8, 7, 9, 0));
        logged(office, TOLD_IN_TIME, NoticeOffice.NOTICE_DUE.minusHours(8));
        logged(office, TOLD_LATE, LocalDateTime.of(2026, 8, 7, 8, 0));
        office.at(NoticeOffice.LAST_MOMENT);
        look(office);
        assertThat(says(office, TOLD_IN_TIME)).isEqualTo(Recommendation.WAIT_FOR_THE_VOTER);
        office.at(NoticeOffice.LAST_MOMENT.plusMinutes(1));
        look(office);
        assertThat(says(office, NEVER_TOLD)).isEqualTo(Recommendation.RESEARCH);
        assertThat(says(office, TOLD_LATE)).isEqualTo(Recommendation.RESEARCH);
        assertThat(says(office, TOLD_IN_TIME)).isEqualTo(Recommendation.REJECT);
        assertThat(open(office, NEVER_TOLD)).contains("no notice was logged as sent in time");
        assertThat(open(office, TOLD_LATE)).contains("no notice was logged as sent in time");
        assertThat(office.ask(NEVER_TOLD, Ask.IDENTIFICATION).isOpen())
                .as("that it never went out stays to be seen")
                .isTrue();
    }

    @OnBothDatabases
    void mail_that_came_back_is_no_failure_to_notify(TestOffice services) {
        NoticeOffice office = NoticeOffice.loaded(services);
        office.primary().reviewing(TOLD_IN_TIME).work();
        Notice sent = logged(office, TOLD_IN_TIME, NoticeOffice.NOON);
        office.at(NoticeOffice.LAST_MOMENT.plusMinutes(1));
        LogReturnedMail back =
                new LogReturnedMail(TOLD_IN_TIME, sent.number(), sent.version(), 1, NoticeOffice.LAST_MOMENT);
        accepted(Office.as("jon", () -> office.service().logCameBack(back)));
        look(office);
        assertThat(says(office, TOLD_IN_TIME)).isEqualTo(Recommendation.REJECT);
    }

    private static Notice logged(NoticeOffice office, EnvelopeKey key, LocalDateTime sentAt) {
        return office.logged("jon", office.ask(key, Ask.IDENTIFICATION), sentAt);
    }

    private static void look(NoticeOffice office) {
        office.primary().office().the(DeadlineService.class).recordPassedDeadlines(new ElectionId(Primary.ID));
    }

    private static Recommendation says(NoticeOffice office, EnvelopeKey key) {
        return office.primary().reviewing(key).report().recommendation();
    }

    private static String open(NoticeOffice office, EnvelopeKey key) {
        return String.join(
                "; ", office.primary().reviewing(key).report().settled().stillOpen());
    }
}
