package org.proviso.journey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.proviso.journey.Office.as;
import static org.proviso.journey.PageDriver.fill;
import static org.proviso.journey.PageDriver.marked;
import static org.proviso.journey.PageDriver.press;
import static org.proviso.journey.PageDriver.said;

import java.time.LocalDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.proviso.core.EnvelopeKey;
import org.proviso.notices.LogNoticeSent;
import org.proviso.notices.Notice;
import org.proviso.notices.NoticeAttempt;
import org.proviso.notices.NoticeChannel;
import org.proviso.notices.NoticeService;
import org.springframework.beans.factory.annotation.Autowired;

/** How it is logged that a voter was told: NoticeSentSheet, ReturnedMailSheet. */
@OnPages
class NoticesSheetsTest {

    private static final LocalDateTime MORNING = LocalDateTime.of(2026, 8, 6, 9, 30);

    @Autowired
    private PageDriver pages;

    private static Notice notice(EnvelopeKey key) {
        return as("jon", () -> PagesOffice.the(NoticeService.class).notices(key))
                .get(0);
    }

    private static List<NoticeAttempt> attempts(EnvelopeKey key) {
        return as(
                "jon",
                () -> PagesOffice.the(NoticeService.class)
                        .attempts(key, notice(key).number()));
    }

    private static String letter(EnvelopeKey key) {
        return "notices/letter/" + key.envelopeNo() + "/" + notice(key).number();
    }

    @Test
    void a_notice_is_logged_with_how_and_when() {
        EnvelopeKey key = PagesOffice.worked("P-1022");
        String when = "Date and time sent, or voter reached";
        pages.on(letter(key), "jon", () -> {
            press("Log notice");
            fill("How", NoticeChannel.PHONE);
            fill(when, null);
            press("Log notice");
            assertThat(marked(when)).isEqualTo("Enter the date and time.");
            fill(when, LocalDateTime.of(2026, 8, 7, 9, 0));
            press("Log notice");
            assertThat(marked(when)).contains("is in the future.");
            assertThat(attempts(key)).isEmpty();
            fill(when, MORNING);
            press("Log notice");
        });
        assertThat(attempts(key))
                .extracting(NoticeAttempt::channel, NoticeAttempt::sentAt)
                .containsExactly(tuple(NoticeChannel.PHONE, MORNING));
    }

    @Test
    void returned_mail_is_logged_with_when_it_came_back() {
        EnvelopeKey key = PagesOffice.worked("P-1009");
        PagesOffice.done(
                "jon",
                () -> PagesOffice.the(NoticeService.class)
                        .logSent(new LogNoticeSent(
                                key, notice(key).number(), notice(key).version(), NoticeChannel.MAIL, MORNING)));
        String when = "Date and time it came back";
        pages.on(letter(key), "jon", () -> {
            press("Log returned mail");
            fill(when, null);
            press("Log returned mail");
            assertThat(marked(when)).isEqualTo("Enter the date and time.");
            fill(when, MORNING.minusHours(1));
            press("Log returned mail");
            assertThat(marked(when)).isEqualTo("Mail cannot come back before it was sent.");
            assertThat(attempts(key)).extracting(NoticeAttempt::cameBackAt).containsOnlyNulls();
            fill(when, MORNING.plusHours(2));
            press("Log returned mail");
        });
        assertThat(attempts(key)).extracting(NoticeAttempt::cameBackAt).containsExactly(MORNING.plusHours(2));
        pages.on(letter(key), "jon", () -> {
            press("Take back returned mail 1");
            fill("Reason", "Another voter's mail.");
            press("Take back returned mail");
            assertThat(attempts(key)).extracting(NoticeAttempt::cameBackAt).containsOnlyNulls();
            press("Take back attempt 1");
            press("Take back attempt");
            assertThat(marked("Reason")).startsWith("Required.");
            fill("Reason", "Not mailed.");
            press("Take back attempt");
            assertThat(said()).contains("taken back: Not mailed.");
        });
        assertThat(notice(key).isOpen()).isTrue();
    }
}
