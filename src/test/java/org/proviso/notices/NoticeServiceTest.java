package org.proviso.notices;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static org.proviso.core.act.ActResults.accepted;
import static org.proviso.core.act.ActResults.field;
import static org.proviso.core.act.ActResults.why;
import static org.proviso.journey.Office.as;

import jakarta.validation.ConstraintViolationException;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import org.proviso.access.NotPermittedException;
import org.proviso.canvass.replay.ElectionReplayService;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.core.chain.LedgerEntry;
import org.proviso.core.rules.Ask;
import org.proviso.database.OnADatabase;
import org.proviso.database.OnBothDatabases;
import org.proviso.database.TestOffice;
import org.proviso.intake.LoadedOffice;
import org.proviso.intake.RecordCure;
import org.proviso.intake.cure.CureService;
import org.proviso.journey.Primary;
import org.proviso.notices.NoticeSlipService.TakeBackAttempt;
import org.proviso.review.assess.AssessmentService;
import org.proviso.review.news.DeadlineService;
import org.springframework.dao.OptimisticLockingFailureException;

class NoticeServiceTest {

    private static final EnvelopeKey NO_ID = NoticeOffice.key(new EnvelopeNumber("P-1009"));
    private static final EnvelopeKey UNSIGNED = NoticeOffice.key(new EnvelopeNumber("P-1013"));

    private static RecordCure brought(EnvelopeKey key) {
        return new RecordCure(
                key.electionId(), key.envelopeNo(), Ask.IDENTIFICATION, NoticeOffice.NOON, "State ID seen");
    }

    @OnADatabase
    void every_ask_is_due_at_once_by_the_packs_deadline_whatever_is_recommended(TestOffice services) {
        NoticeOffice office = NoticeOffice.loaded(services);
        List<DueNotice> due = as("jon", () -> office.service().due(new ElectionId(Primary.ID)));
        assertThat(due).extracting(dueNotice -> dueNotice.notice().key()).contains(NO_ID, UNSIGNED);
        assertThat(due).allSatisfy(dueNotice -> {
            assertThat(dueNotice.notice().dueAt().withNano(0)).isEqualTo(NoticeOffice.NOTICE_DUE);
            assertThat(dueNotice.overdue()).isFalse();
            assertThat(dueNotice.timeIsUp()).isFalse();
        });
        DueNotice first = due.stream()
                .filter(dueNotice -> dueNotice.notice().key().equals(NO_ID))
                .findFirst()
                .orElseThrow();
        assertThat(first.until()).isEqualTo(NoticeOffice.LAST_MOMENT);
        office.at(NoticeOffice.NOTICE_DUE.plusMinutes(1));
        assertThat(as("jon", () -> office.service().due(new ElectionId(Primary.ID))))
                .allMatch(DueNotice::overdue);
    }

    @OnADatabase
    void an_ask_that_was_cured_before_its_notice_went_out_is_withdrawn_not_deleted(TestOffice services) {
        NoticeOffice office = NoticeOffice.loaded(services);
        as("jon", () -> {
            office.primary().office().the(CureService.class).record(brought(NO_ID));
            return true;
        });
        assertThat(office.ask(NO_ID, Ask.IDENTIFICATION).isWithdrawn()).isTrue();
        assertThat(as("jon", () -> office.service().due(new ElectionId(Primary.ID))))
                .noneMatch(dueNotice -> dueNotice.notice().key().equals(NO_ID));
    }

    @OnADatabase
    void what_went_out_is_not_withdrawn_when_the_voter_acts_on_it(TestOffice services) {
        NoticeOffice office = NoticeOffice.loaded(services);
        office.logged("jon", office.ask(NO_ID, Ask.IDENTIFICATION), NoticeOffice.NOON);
        as("jon", () -> {
            office.primary().office().the(CureService.class).record(brought(NO_ID));
            return true;
        });
        Notice notice = office.ask(NO_ID, Ask.IDENTIFICATION);
        assertThat(notice.isWithdrawn()).isFalse();
        assertThat(notice.sentAt()).isEqualTo(NoticeOffice.NOON);
    }

    @OnADatabase
    void of_several_attempts_each_is_logged_and_the_earliest_decides(TestOffice services) {
        NoticeOffice office = NoticeOffice.loaded(services);
        Notice first = office.logged("jon", office.ask(NO_ID, Ask.IDENTIFICATION), NoticeOffice.NOON.minusHours(1));
        Notice second = office.logged("jon", first, NoticeOffice.NOON);
        LocalDateTime atTheTable = LocalDateTime.of(2026, 8, 4, 20, 0);
        Notice third = accepted(office.log("jon", second, NoticeChannel.IN_PERSON, atTheTable));
        assertThat(second.sentAt()).isEqualTo(NoticeOffice.NOON.minusHours(1));
        assertThat(third.sentAt()).isEqualTo(atTheTable);
        assertThat(as("jon", () -> office.service().attempts(NO_ID, third.number())))
                .extracting(NoticeAttempt::sentAt)
                .containsExactly(NoticeOffice.NOON.minusHours(1), NoticeOffice.NOON, atTheTable);
    }

    @OnADatabase
    void nothing_can_have_gone_out_later_than_now_or_before_the_ballot_was_cast(TestOffice services) {
        NoticeOffice office = NoticeOffice.loaded(services);
        Notice notice = office.ask(NO_ID, Ask.IDENTIFICATION);
        ActResult<Notice> future = office.log("jon", notice, NoticeChannel.MAIL, NoticeOffice.NOON.plusMinutes(1));
        assertThat(why(future)).isEqualTo(Why.MOMENT_NOT_POSSIBLE);
        assertThat(field(future)).isEqualTo("sentAt");
        assertThat(future.refusals().get(0).words()).contains("is in the future");
        ActResult<Notice> early = office.log("jon", notice, NoticeChannel.MAIL, LocalDateTime.of(2026, 8, 4, 6, 0));
        assertThat(why(early)).isEqualTo(Why.MOMENT_NOT_POSSIBLE);
        assertThat(field(early)).isEqualTo("sentAt");
        assertThat(early.refusals().get(0).words()).contains("was not cast until");
        assertThat(office.ask(NO_ID, Ask.IDENTIFICATION)).isEqualTo(notice);
        assertThatThrownBy(() -> office.log("jon", notice, null, NoticeOffice.NOON))
                .isInstanceOf(ConstraintViolationException.class);
    }

    @OnADatabase
    void mail_comes_back_once_and_not_before_it_was_sent_and_the_voter_still_counts_as_told(TestOffice services) {
        NoticeOffice office = NoticeOffice.loaded(services);
        Notice sent = office.logged("jon", office.ask(NO_ID, Ask.IDENTIFICATION), NoticeOffice.NOON.minusHours(1));
        ActResult<Notice> before = cameBack(office, sent, NoticeOffice.NOON.minusHours(2));
        assertThat(why(before)).isEqualTo(Why.MOMENT_NOT_POSSIBLE);
        assertThat(field(before)).isEqualTo("cameBackAt");
        assertThat(why(cameBack(office, sent, NoticeOffice.NOON.plusMinutes(1))))
                .isEqualTo(Why.MOMENT_NOT_POSSIBLE);
        Notice returned = accepted(cameBack(office, sent, NoticeOffice.NOON));
        assertThat(returned.sentAt()).isEqualTo(NoticeOffice.NOON.minusHours(1));
        LedgerEntry entry = LoadedOffice.lastEntry(services);
        assertThat(entry.act()).isEqualTo("notice_came_back");
        assertThat(entry.payload())
                .containsEntry("came_back_at", "2026-08-05T12:00")
                .containsOnlyKeys("kind", "ask", "attempt", "notice", "came_back_at");
        assertThat(why(cameBack(office, returned, NoticeOffice.NOON))).isEqualTo(Why.NOT_IN_THIS_STATE);
    }

    private static ActResult<Notice> cameBack(NoticeOffice office, Notice notice, LocalDateTime at) {
        return as(
                "jon",
                () -> office.service()
                        .logCameBack(new LogReturnedMail(notice.key(), notice.number(), notice.version(), 1, at)));
    }

    @OnADatabase
    void the_letter_of_a_decision_goes_out_after_it_and_not_once_it_is_set_aside(TestOffice services) {
        NoticeOffice office = NoticeOffice.loaded(services);
        EnvelopeKey key = office.primary().envelope("registered_late");
        LocalDateTime decided = LocalDateTime.of(2026, 8, 6, 12, 0);
        office.at(decided);
        office.deciding().settled(key);
        Notice due = office.outcome(key);
        ActResult<Notice> before = office.log("carl", due, NoticeChannel.MAIL, decided.minusMinutes(1));
        assertThat(why(before)).isEqualTo(Why.MOMENT_NOT_POSSIBLE);
        assertThat(field(before)).isEqualTo("sentAt");
        office.deciding().reopened(key);
        Notice withdrawn = office.of(key).get(0);
        assertThat(why(office.log("carl", withdrawn, NoticeChannel.MAIL, decided)))
                .isEqualTo(Why.NOT_IN_THIS_STATE);
    }

    @OnADatabase
    void a_notice_seen_in_an_older_version_is_refused(TestOffice services) {
        NoticeOffice office = NoticeOffice.loaded(services);
        Notice seen = office.ask(NO_ID, Ask.IDENTIFICATION);
        office.logged("jon", seen, NoticeOffice.NOON);
        assertThatThrownBy(() -> office.logged("jon", seen, NoticeOffice.NOON))
                .isInstanceOf(OptimisticLockingFailureException.class);
    }

    @OnADatabase
    void a_rejection_makes_one_outcome_notice_due_and_reopening_withdraws_it(TestOffice services) {
        NoticeOffice office = NoticeOffice.loaded(services);
        EnvelopeKey key = office.primary().envelope("registered_late");
        office.at(LocalDateTime.of(2026, 8, 6, 12, 0));
        office.deciding().settled(key);
        Notice due = office.outcome(key);
        assertThat(due.dueAt()).isEqualTo(LocalDateTime.of(2026, 8, 6, 12, 0));
        assertThat(as("carl", () -> office.service().counts(new ElectionId(Primary.ID)))
                        .outcomes())
                .isOne();
        office.deciding().reopened(key);
        assertThat(office.of(key)).singleElement().matches(Notice::isWithdrawn);
        assertThat(as("carl", () -> office.service().counts(new ElectionId(Primary.ID)))
                        .outcomes())
                .isZero();
    }

    @OnADatabase
    void a_ballot_that_counts_in_full_needs_no_notice(TestOffice services) {
        NoticeOffice office = NoticeOffice.loaded(services);
        EnvelopeKey key = office.primary().envelope("in_order");
        office.at(LocalDateTime.of(2026, 8, 6, 12, 0));
        office.deciding().settled(key);
        assertThat(office.of(key)).isEmpty();
    }

    @OnADatabase
    void asks_are_counted_by_envelope_and_apart_for_extended_hours(TestOffice services) {
        NoticeOffice office = NoticeOffice.loaded(services);
        office.logged("jon", office.ask(NO_ID, Ask.IDENTIFICATION), NoticeOffice.NOON);
        NoticeCounts counts = as("carl", () -> office.service().counts(new ElectionId(Primary.ID)));
        int asked = as("carl", () -> office.service().due(new ElectionId(Primary.ID))).stream()
                        .map(dueNotice -> dueNotice.notice().key())
                        .distinct()
                        .toList()
                        .size()
                + 1;
        assertThat(counts.askEnvelopes()).isEqualTo(asked);
        assertThat(counts.ofGroup(true).askEnvelopes() + counts.ofGroup(false).askEnvelopes())
                .isEqualTo(asked);
        assertThat(counts.lines())
                .extracting(NoticeCounts.Line::askEnvelopesSent)
                .contains(1);
    }

    @OnADatabase
    void the_ledger_has_codes_and_moments_and_nobody_in_it(TestOffice services) {
        NoticeOffice office = NoticeOffice.loaded(services);
        Notice sent = office.logged("jon", office.ask(NO_ID, Ask.IDENTIFICATION), NoticeOffice.NOON);
        LedgerEntry entry = LoadedOffice.lastEntry(services);
        assertThat(entry.act()).isEqualTo("notice_sent");
        assertThat(entry.subject()).isEqualTo("P-1009");
        NoticeAttempt attempt =
                as("jon", () -> office.service().attempts(NO_ID, sent.number())).get(0);
        Map<String, Object> payload = entry.payload();
        assertThat(payload)
                .containsEntry("kind", "ask")
                .containsEntry("ask", "identification")
                .containsEntry("channel", "mail")
                .containsEntry("sent_at", "2026-08-05T12:00")
                .containsOnlyKeys("kind", "ask", "channel", "sent_at", "letter", "attempt", "notice");
        assertThat(payload.get("letter")).asString().hasSize(64).isNotEqualTo(attempt.letterHash());
        assertThat(entry.line()).doesNotContain("jon");
    }

    @OnADatabase
    void only_who_may_print_a_letter_sees_or_logs_it(TestOffice services) {
        NoticeOffice office = NoticeOffice.loaded(services);
        EnvelopeKey decided = office.primary().envelope("registered_late");
        office.at(LocalDateTime.of(2026, 8, 6, 12, 0));
        office.deciding().settled(decided);
        Notice outcome = office.outcome(decided);
        Notice ask = office.ask(NO_ID, Ask.IDENTIFICATION);
        assertThatThrownBy(() -> office.logged("hal", ask, NoticeOffice.NOON))
                .isInstanceOf(NotPermittedException.class);
        assertThatThrownBy(() -> office.logged("jon", outcome, LocalDateTime.of(2026, 8, 6, 12, 0)))
                .isInstanceOf(NotPermittedException.class);
        assertThatThrownBy(() -> as("eve", () -> office.service().due(new ElectionId(Primary.ID))))
                .isInstanceOf(NotPermittedException.class);
        assertThatThrownBy(() -> as("jon", () -> office.service().letter(decided, outcome.number())))
                .isInstanceOf(NotPermittedException.class);
        assertThatThrownBy(() -> office.service().counts(new ElectionId(Primary.ID)))
                .isInstanceOf(NotPermittedException.class);
        assertThat(as("jon", () -> office.service().due(new ElectionId(Primary.ID))))
                .noneMatch(dueNotice -> dueNotice.notice().kind() == NoticeKind.OUTCOME);
        assertThat(as("carl", () -> office.service().due(new ElectionId(Primary.ID))))
                .anyMatch(dueNotice -> dueNotice.notice().kind() == NoticeKind.OUTCOME);
    }

    private static ActResult<Notice> takenBack(TestOffice services, Notice notice, int attempt) {
        return as(
                "jon",
                () -> services.the(NoticeSlipService.class)
                        .takeBackSent(new TakeBackAttempt(
                                notice.key(), notice.number(), notice.version(), attempt, "It was another letter.")));
    }

    private static Recommendation outlook(TestOffice services) {
        return services.the(AssessmentService.class).latest(NO_ID).orElseThrow().outlook();
    }

    @OnBothDatabases
    void a_letter_logged_by_mistake_is_taken_back_and_what_ran_out_by_it_is_open_again(TestOffice services) {
        NoticeOffice office = NoticeOffice.loaded(services);
        Notice first = office.logged("jon", office.ask(NO_ID, Ask.IDENTIFICATION), NoticeOffice.NOON);
        Notice both = office.logged("jon", first, NoticeOffice.NOON.minusHours(1));
        Notice one = accepted(takenBack(services, both, 2));
        assertThat(one.sentAt()).as("the attempt that is left").isEqualTo(NoticeOffice.NOON);
        office.at(NoticeOffice.LAST_MOMENT.plusMinutes(1));
        services.the(DeadlineService.class).recordPassedDeadlines(new ElectionId(Primary.ID));
        assertThat(outlook(services)).isEqualTo(Recommendation.REJECT);
        Notice none = accepted(takenBack(services, one, 1));
        assertThat(none.sentAt()).isNull();
        assertThat(none.isOpen()).isTrue();
        assertThat(as("jon", () -> office.service().due(new ElectionId(Primary.ID))))
                .as("the letter is due again")
                .anyMatch(due -> due.notice().key().equals(NO_ID));
        assertThat(outlook(services)).as("nobody told the voter").isEqualTo(Recommendation.RESEARCH);
        assertThat(as("jon", () -> office.service().attempts(NO_ID, none.number())))
                .extracting(NoticeAttempt::sentAt, NoticeAttempt::takenBackBecause)
                .containsExactly(
                        tuple(NoticeOffice.NOON, "It was another letter."),
                        tuple(NoticeOffice.NOON.minusHours(1), "It was another letter."));
        assertThat(why(takenBack(services, none, 1))).isEqualTo(Why.NOT_IN_THIS_STATE);
        LedgerEntry entry = LoadedOffice.lastEntry(services);
        assertThat(entry.act()).isEqualTo("notice_taken_back");
        assertThat(entry.payload())
                .containsEntry("attempt", 1L)
                .containsEntry("sent_at", "2026-08-05T12:00")
                .containsOnlyKeys("kind", "ask", "attempt", "notice", "sent_at", "because");
        assertThatThrownBy(() -> takenBack(services, one, 1)).isInstanceOf(OptimisticLockingFailureException.class);
        assertThat(services.the(ElectionReplayService.class)
                        .replay(new ElectionId(Primary.ID))
                        .compared())
                .allSatisfy(compared -> assertThat(compared.first()).isEmpty());
    }

    @OnBothDatabases
    void returned_mail_logged_by_mistake_is_taken_back(TestOffice services) {
        NoticeOffice office = NoticeOffice.loaded(services);
        Notice sent = office.logged("jon", office.ask(NO_ID, Ask.IDENTIFICATION), NoticeOffice.NOON.minusHours(1));
        Notice returned = accepted(cameBack(office, sent, NoticeOffice.NOON));
        TakeBackAttempt slip =
                new TakeBackAttempt(NO_ID, returned.number(), returned.version(), 1, "Another voter's mail.");
        Notice now =
                as("jon", () -> accepted(services.the(NoticeSlipService.class).takeBackCameBack(slip)));
        assertThat(now.sentAt()).isEqualTo(NoticeOffice.NOON.minusHours(1));
        assertThat(as("jon", () -> office.service().attempts(NO_ID, now.number())))
                .singleElement()
                .returns(null, NoticeAttempt::cameBackAt)
                .returns(false, NoticeAttempt::isTakenBack);
        assertThat(LoadedOffice.lastEntry(services).act()).isEqualTo("returned_mail_taken_back");
        assertThat(services.jdbc()
                        .sql("select because from returned_mail_taken_back")
                        .query(String.class)
                        .single())
                .isEqualTo("Another voter's mail.");
        accepted(cameBack(office, now, NoticeOffice.NOON));
    }

    @OnADatabase
    void a_letter_about_a_decision_that_was_set_aside_is_not_due_again_when_it_is_taken_back(TestOffice services) {
        NoticeOffice office = NoticeOffice.loaded(services);
        EnvelopeKey key = office.primary().envelope("registered_late");
        LocalDateTime decided = LocalDateTime.of(2026, 8, 6, 12, 0);
        office.at(decided);
        office.deciding().settled(key);
        Notice sent = accepted(office.log("carl", office.outcome(key), NoticeChannel.MAIL, decided));
        TakeBackAttempt slip = new TakeBackAttempt(key, sent.number(), sent.version(), 1, "Not mailed yet.");
        Notice due =
                as("carl", () -> accepted(services.the(NoticeSlipService.class).takeBackSent(slip)));
        assertThat(due.isOpen()).isTrue();
        Notice again = accepted(office.log("carl", due, NoticeChannel.MAIL, decided));
        office.deciding().reopened(key);
        TakeBackAttempt second = new TakeBackAttempt(key, again.number(), again.version(), 2, "Not mailed either.");
        assertThat(as(
                                "carl",
                                () -> accepted(
                                        services.the(NoticeSlipService.class).takeBackSent(second)))
                        .isWithdrawn())
                .isTrue();
    }
}
