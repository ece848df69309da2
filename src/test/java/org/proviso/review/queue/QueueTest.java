package org.proviso.review.queue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.journey.Office.accepted;
import static org.proviso.journey.Office.as;

import java.util.List;
import java.util.Optional;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;
import org.proviso.core.act.ActResult;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.database.OnBothDatabases;
import org.proviso.database.TestOffice;
import org.proviso.journey.Primary;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.acts.LinkService;
import org.proviso.review.acts.ResearchService;
import org.proviso.review.facts.WaitsFor;
import org.proviso.review.file.CaseFile;
import org.proviso.review.file.CaseFileService;
import org.proviso.review.file.HistoryEntry;
import org.proviso.review.file.HistoryService;
import org.proviso.review.find.FindService;

/** The queue of reviewers, over the tables. */
class QueueTest {

    private static final QueueFilter ALL = QueueFilter.all(new ElectionId(Primary.ID));

    @OnBothDatabases
    void the_next_case_is_the_first_of_the_list_and_nobody_gets_it_twice(TestOffice services) {
        Primary.loaded(services);
        QueueService queue = services.the(QueueService.class);
        List<QueueRow> rows = as("ada", () -> queue.page(open(), 0, 60));
        assertThat(rows)
                .hasSize(60)
                .isSortedAccordingTo((row, other) ->
                        Integer.compare(row.turn().rank(), other.turn().rank()));
        EnvelopeNumber first = taken(as("ada", () -> queue.takeNext(new ElectionId(Primary.ID), List.of())));
        EnvelopeNumber second = taken(as("ben", () -> queue.takeNext(new ElectionId(Primary.ID), List.of())));
        assertThat(first.value()).isEqualTo(rows.get(0).envelopeNo().value());
        assertThat(second.value()).isEqualTo(rows.get(1).envelopeNo().value());
        assertThat(as("ada", () -> queue.count(open()))).isEqualTo(58);
    }

    @OnBothDatabases
    void what_was_passed_over_or_waits_for_an_answer_does_not_come_next(TestOffice services) {
        Primary.loaded(services);
        QueueService queue = services.the(QueueService.class);
        List<QueueRow> rows = as("ada", () -> queue.page(open(), 0, 3));
        EnvelopeKey asked =
                new EnvelopeKey(new ElectionId(Primary.ID), rows.get(1).envelopeNo());
        as(
                "ada",
                () -> services.the(ResearchService.class)
                        .ask(asked, WaitsFor.ANOTHER_OFFICE, "The library", "Call the library."));
        EnvelopeNumber next = taken(as(
                "ada",
                () -> queue.takeNext(
                        new ElectionId(Primary.ID), List.of(rows.get(0).envelopeNo()))));
        assertThat(next.value()).isEqualTo(rows.get(2).envelopeNo().value());
    }

    @OnBothDatabases
    void a_list_shows_what_its_filter_leaves(TestOffice services) {
        Primary.loaded(services);
        QueueService queue = services.the(QueueService.class);
        QueueFilter rejects = ALL.with(QueueColumn.OUTLOOK, "reject");
        List<QueueRow> rows = as("ada", () -> queue.page(rejects, 0, 60));
        assertThat(rows).isNotEmpty().allMatch(row -> row.outlook() == Recommendation.REJECT);
        assertThat(as("ada", () -> queue.count(rejects))).isEqualTo(rows.size());
        String place = as("ada", () -> queue.choices(ALL.electionId(), QueueColumn.LOCATION, "", 0, 1))
                .get(0)
                .value();
        QueueFilter there = ALL.with(QueueColumn.LOCATION, place);
        assertThat(as("ada", () -> queue.page(there, 0, 60)))
                .isNotEmpty()
                .allMatch(row -> row.votingLocation().equals(place));
        assertThat(as("ada", () -> queue.count(ALL.with(QueueColumn.HOLDER, "ada"))))
                .isZero();
    }

    @OnBothDatabases
    void a_case_that_changed_comes_before_those_in_their_turn(TestOffice services) {
        Primary primary = Primary.loaded(services);
        QueueStore store = services.the(QueueStore.class);
        List<QueueRow> rows = as("ada", () -> services.the(QueueService.class).page(open(), 0, 60));
        QueueRow last = rows.stream()
                .filter(row -> row.turn() == QueueReason.IN_TURN)
                .reduce((earlier, later) -> later)
                .orElseThrow();
        store.changed(new EnvelopeKey(new ElectionId(Primary.ID), last.envelopeNo()));
        List<QueueRow> now = as("ada", () -> services.the(QueueService.class).page(open(), 0, 60));
        QueueRow firstInTurn = now.stream()
                .filter(row -> row.turn() != QueueReason.CURE)
                .findFirst()
                .orElseThrow();
        assertThat(firstInTurn.envelopeNo().value()).isEqualTo(last.envelopeNo().value());
        assertThat(firstInTurn.turn()).isEqualTo(QueueReason.CHANGED);
        assertThat(primary.now(new EnvelopeKey(new ElectionId(Primary.ID), last.envelopeNo()))
                        .version())
                .isZero();
    }

    @OnBothDatabases
    void sure_links_are_listed_to_be_confirmed_together_and_no_longer_once_they_are(TestOffice services) {
        Primary.loaded(services);
        SecondReviewQueueService waiting = services.the(SecondReviewQueueService.class);
        List<SureLink> sure = as("ada", () -> waiting.sureLinks(new ElectionId(Primary.ID), 5));
        assertThat(sure).hasSize(5).allMatch(link -> !link.evidence().isEmpty());
        as(
                "ada",
                () -> services.the(LinkService.class)
                        .confirmTogether(sure.stream().map(SureLink::seen).toList()));
        assertThat(as("ada", () -> waiting.sureLinks(new ElectionId(Primary.ID), 60)))
                .extracting(link -> link.seen().key())
                .doesNotContainAnyElementsOf(
                        sure.stream().map(link -> link.seen().key()).toList());
    }

    @OnBothDatabases
    void a_case_is_opened_with_who_has_it_and_what_was_done(TestOffice services) {
        Primary primary = Primary.loaded(services);
        EnvelopeKey key = primary.envelope("in_order");
        primary.taken(key, new UserName("ada"));
        CaseFile file =
                as("ada", () -> services.the(CaseFileService.class).open(key)).orElseThrow();
        assertThat(file.holding().yours()).isTrue();
        assertThat(file.holding().since()).isPresent();
        assertThat(file.law()).hasSize(8);
        assertThat(file.around().timeLine()).anyMatch(moment -> moment.words().startsWith("this envelope"));
        assertThat(as("ben", () -> services.the(CaseFileService.class).open(key))
                        .orElseThrow()
                        .holding()
                        .yours())
                .isFalse();
        assertThat(as("ada", () -> services.the(HistoryService.class).of(key)))
                .extracting(HistoryEntry::words)
                .contains("taken");
        assertThat(as(
                                "ada",
                                () -> services.the(FindService.class)
                                        .find(
                                                new ElectionId(Primary.ID),
                                                key.envelopeNo().value()))
                        .envelopes())
                .hasSize(1);
    }

    private static QueueFilter open() {
        return ALL.with(QueueColumn.STATE, "open");
    }

    private static EnvelopeNumber taken(Optional<ActResult<EnvelopeCase>> outcome) {
        EnvelopeCase now = accepted(outcome.orElseThrow());
        return now.key().envelopeNo();
    }
}
