package org.proviso.review.queue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.journey.Office.accepted;
import static org.proviso.journey.Office.as;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;
import org.proviso.database.OnBothDatabases;
import org.proviso.database.Statements;
import org.proviso.database.TestOffice;
import org.proviso.journey.Primary;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.acts.CaseAssignmentService;
import org.proviso.review.acts.ResearchService;
import org.proviso.review.facts.WaitsFor;

/** Lists of cases: what narrows them, their orders, pages, and the next of a list. */
class QueueListTest {

    private static final ElectionId ELECTION = new ElectionId(Primary.ID);
    private static final QueueFilter ALL = QueueFilter.all(ELECTION);

    private static List<QueueRow> rows(QueueService queue, QueueFilter filter) {
        return as("ada", () -> queue.page(filter, 0, 1_000));
    }

    private static List<EnvelopeNumber> numbers(List<QueueRow> rows) {
        return rows.stream().map(QueueRow::envelopeNo).toList();
    }

    @OnBothDatabases
    void each_column_leaves_the_cases_that_have_its_value_and_no_others(TestOffice office) {
        Primary primary = Primary.loaded(office);
        QueueService queue = office.the(QueueService.class);
        office.jdbc()
                .sql("update envelope_case set queue_language = 'es' where envelope_no in ('P-1003', 'P-1004')")
                .update();
        primary.taken(new EnvelopeKey(ELECTION, new EnvelopeNumber("P-1005")), new UserName("ada"));
        office.jdbc()
                .sql("update envelope_case set changed_at = timestamp with time zone '2026-08-01 12:00:00+00:00'"
                        + " where envelope_no in ('P-1006', 'P-1007')")
                .update();
        List<QueueRow> all = rows(queue, ALL);
        leaves(
                queue,
                all,
                QueueColumn.LOCATION,
                all.get(9).votingLocation(),
                row -> row.votingLocation().equals(all.get(9).votingLocation()));
        leaves(
                queue,
                all,
                QueueColumn.PRECINCT,
                all.get(9).precinct(),
                row -> row.precinct().equals(all.get(9).precinct()));
        leaves(
                queue,
                all,
                QueueColumn.REASON,
                "no_id",
                row -> row.issueReasons().contains("no_id"));
        leaves(queue, all, QueueColumn.LANGUAGE, "es", row -> row.language().equals("es"));
        leaves(
                queue,
                all,
                QueueColumn.OUTLOOK,
                "reject",
                row -> row.outlook().code().equals("reject"));
        leaves(queue, all, QueueColumn.HOLDER, "ada", row -> row.with() != null);
        leaves(
                queue,
                all,
                QueueColumn.AGE,
                "1",
                row -> List.of("P-1006", "P-1007").contains(row.envelopeNo().value()));
        assertThat(numbers(
                        rows(queue, ALL.with(QueueColumn.LANGUAGE, "es").with(QueueColumn.REASON, "no_such_reason"))))
                .isEmpty();
    }

    private static void leaves(
            QueueService queue, List<QueueRow> all, QueueColumn column, String value, Predicate<QueueRow> has) {
        QueueFilter filter = ALL.with(column, value);
        List<QueueRow> left = rows(queue, filter);
        assertThat(numbers(left))
                .as(column + " " + value)
                .isNotEmpty()
                .hasSizeLessThan(all.size())
                .containsExactlyElementsOf(numbers(all.stream().filter(has).toList()));
        assertThat(as("ada", () -> queue.count(filter))).isEqualTo(left.size());
    }

    @OnBothDatabases
    void each_order_is_that_of_its_column_and_no_case_is_on_two_pages(TestOffice office) {
        Primary primary = Primary.loaded(office);
        primary.taken(new EnvelopeKey(ELECTION, new EnvelopeNumber("P-1005")), new UserName("ada"));
        primary.taken(new EnvelopeKey(ELECTION, new EnvelopeNumber("P-1006")), new UserName("ben"));
        QueueService queue = office.the(QueueService.class);
        for (QueueSort sort : QueueSort.values()) {
            for (boolean descending : List.of(false, true)) {
                QueueFilter filter = ALL.sortedBy(sort, descending);
                List<QueueRow> all = rows(queue, filter);
                assertThat(all).hasSize(60);
                Comparator<QueueRow> order = Comparator.comparing(key(sort))
                        .thenComparing(row -> row.envelopeNo().value());
                if (sort != QueueSort.PRIORITY) {
                    assertThat(numbers(all))
                            .as(sort + (descending ? " last first" : ""))
                            .containsExactlyElementsOf(numbers(all.stream()
                                    .sorted(descending ? order.reversed() : order)
                                    .toList()));
                }
                List<EnvelopeNumber> paged = new ArrayList<>();
                for (int offset = 0; offset < 60; offset += 7) {
                    int from = offset;
                    paged.addAll(numbers(as("ada", () -> queue.page(filter, from, 7))));
                }
                assertThat(paged).as(sort.code()).containsExactlyElementsOf(numbers(all));
            }
        }
    }

    private static Function<QueueRow, String> key(QueueSort sort) {
        return switch (sort) {
            case PRIORITY, ENVELOPE -> row -> row.envelopeNo().value();
            case OUTLOOK -> row -> row.outlook().code();
            case REASON -> row -> String.join(";", row.issueReasons());
            case LOCATION -> QueueRow::votingLocation;
            case PRECINCT -> QueueRow::precinct;
            case LANGUAGE -> QueueRow::language;
            case HOLDER -> row -> row.with() == null ? "~" : row.with();
            case AGE -> row -> row.since().toString();
        };
    }

    @OnBothDatabases
    void the_next_of_a_list_is_the_one_that_follows_and_never_one_of_another_kind(TestOffice office) {
        Primary.loaded(office);
        QueueService queue = office.the(QueueService.class);
        for (QueueSort sort : QueueSort.values()) {
            QueueFilter list = ALL.with(QueueColumn.REASON, "no_id").sortedBy(sort, sort == QueueSort.PRECINCT);
            List<QueueRow> rows = rows(queue, list).stream()
                    .filter(row -> row.turn().rank() <= QueueReason.IN_TURN.rank())
                    .toList();
            assertThat(rows).as(sort.code()).hasSizeGreaterThan(3);
            EnvelopeKey second = new EnvelopeKey(ELECTION, rows.get(1).envelopeNo());
            QueuePosition place =
                    as("ada", () -> queue.position(list, second.envelopeNo())).orElseThrow();
            NextOfList next =
                    as("ada", () -> queue.takeNextOf(list, place, List.of())).orElseThrow();
            EnvelopeCase taken = accepted(next.taken());
            assertThat(taken.key().envelopeNo().value())
                    .as(sort.code())
                    .isEqualTo(rows.get(2).envelopeNo().value());
            assertThat(taken.takenBy()).isEqualTo(new UserName("ada"));
            EnvelopeCase after =
                    taken(as("ada", () -> queue.takeNextOf(list, next.at().orElseThrow(), List.of())));
            assertThat(after.key().envelopeNo().value())
                    .as(sort.code() + ", the one after")
                    .isEqualTo(rows.get(3).envelopeNo().value());
            for (EnvelopeCase held : List.of(taken, after)) {
                as("ada", () -> office.the(CaseAssignmentService.class).giveBack(held.key(), held.version()));
            }
        }
    }

    @OnBothDatabases
    void the_next_of_a_list_leaves_out_what_is_with_others_waits_or_was_passed_over(TestOffice office) {
        Primary primary = Primary.loaded(office);
        QueueService queue = office.the(QueueService.class);
        QueueFilter list = ALL.with(QueueColumn.REASON, "no_id").sortedBy(QueueSort.ENVELOPE, false);
        List<EnvelopeNumber> rows = numbers(rows(queue, list).stream()
                .filter(row -> row.turn().rank() <= QueueReason.IN_TURN.rank())
                .toList());
        QueuePosition first = as("ada", () -> queue.position(list, rows.get(0))).orElseThrow();
        primary.taken(new EnvelopeKey(ELECTION, rows.get(1)), new UserName("ben"));
        as(
                "ada",
                () -> office.the(ResearchService.class)
                        .ask(new EnvelopeKey(ELECTION, rows.get(2)), WaitsFor.ANOTHER_OFFICE, "The library", "Which?"));
        EnvelopeCase next = taken(as("ada", () -> queue.takeNextOf(list, first, List.of(rows.get(3)))));
        assertThat(next.key().envelopeNo()).isEqualTo(rows.get(4));
        EnvelopeCase again = taken(as("ada", () -> queue.takeNextOf(list, first, List.of(rows.get(3)))));
        assertThat(again).as("it is with her already").isEqualTo(next);
        QueuePosition last =
                as("ada", () -> queue.position(list, rows.get(rows.size() - 1))).orElseThrow();
        assertThat(as("ada", () -> queue.takeNextOf(list, last, List.of()))).isEmpty();
    }

    private static EnvelopeCase taken(Optional<NextOfList> outcome) {
        return accepted(outcome.orElseThrow().taken());
    }

    @OnBothDatabases
    void a_case_lies_in_the_pile_of_whoever_has_to_answer_and_comes_back_with_the_answer(TestOffice office) {
        Primary.loaded(office);
        QueueService queue = office.the(QueueService.class);
        ResearchService research = office.the(ResearchService.class);
        List<EnvelopeNumber> todo = numbers(rows(queue, pile(QueuePile.TO_DO)));
        assertThat(rows(queue, ALL))
                .filteredOn(row -> row.turn() != QueueReason.VOTER)
                .extracting(QueueRow::envelopeNo)
                .containsExactlyElementsOf(todo);
        List<EnvelopeNumber> atFirst = numbers(rows(queue, pile(QueuePile.VOTER)));
        for (WaitsFor waitsFor : WaitsFor.values()) {
            EnvelopeKey key = new EnvelopeKey(ELECTION, todo.get(waitsFor.ordinal()));
            as("ada", () -> research.ask(key, waitsFor, "Somebody", "What?"));
            assertThat(numbers(rows(queue, pile(QueuePile.valueOf(waitsFor.name())))))
                    .as(waitsFor.code())
                    .contains(key.envelopeNo())
                    .hasSize(waitsFor == WaitsFor.VOTER ? atFirst.size() + 1 : 1);
            assertThat(numbers(rows(queue, pile(QueuePile.TO_DO)))).doesNotContain(key.envelopeNo());
            assertThat(rows(queue, ALL))
                    .filteredOn(row -> row.envelopeNo().equals(key.envelopeNo()))
                    .extracting(QueueRow::turnWords)
                    .containsExactly("waiting for " + waitsFor.words());
            as("ben", () -> research.recordAnswer(key, 1, 0, "That."));
            assertThat(numbers(rows(queue, pile(QueuePile.TO_DO)))).containsExactlyElementsOf(todo);
        }
    }

    private static QueueFilter pile(QueuePile pile) {
        return ALL.with(QueueColumn.PILE, pile.code());
    }

    /** Somebody who goes through what another office has answered takes them from there. */
    @OnBothDatabases
    void the_next_of_a_pile_that_waits_is_one_that_waits(TestOffice office) {
        Primary.loaded(office);
        QueueService queue = office.the(QueueService.class);
        QueueFilter list = pile(QueuePile.COLLEAGUE).sortedBy(QueueSort.ENVELOPE, false);
        List<EnvelopeNumber> asked = numbers(rows(queue, pile(QueuePile.TO_DO).sortedBy(QueueSort.ENVELOPE, false)))
                .subList(0, 2);
        for (EnvelopeNumber number : asked) {
            as(
                    "ada",
                    () -> office.the(ResearchService.class)
                            .ask(new EnvelopeKey(ELECTION, number), WaitsFor.COLLEAGUE, "Ben", "Which box?"));
        }
        QueuePosition first =
                as("ben", () -> queue.position(list, asked.get(0))).orElseThrow();
        assertThat(taken(as("ben", () -> queue.takeNextOf(list, first, List.of())))
                        .key()
                        .envelopeNo())
                .isEqualTo(asked.get(1));
    }

    @OnBothDatabases
    void a_page_takes_two_statements_whatever_narrows_and_sorts_it(TestOffice office) {
        Primary.loaded(office);
        QueueService queue = office.the(QueueService.class);
        for (QueueSort sort : QueueSort.values()) {
            QueueFilter list = ALL.with(QueueColumn.REASON, "no_id")
                    .with(QueueColumn.LANGUAGE, "en")
                    .sortedBy(sort, false);
            Statements few = as("ada", () -> Statements.of(() -> queue.page(list, 0, 1)));
            Statements many = as("ada", () -> Statements.of(() -> queue.page(list, 0, 50)));
            assertThat(ofCases(few)).as(sort.code()).isEqualTo(2);
            assertThat(ofCases(many)).as(sort.code()).isEqualTo(2);
            assertThat(many.all()).isEqualTo(few.all());
        }
    }

    private static int ofCases(Statements sent) {
        return sent.times().entrySet().stream()
                .filter(entry -> entry.getKey().contains("envelope_case"))
                .mapToInt(Map.Entry::getValue)
                .sum();
    }
}
