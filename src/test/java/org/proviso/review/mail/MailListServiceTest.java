package org.proviso.review.mail;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.proviso.core.act.ActResults.accepted;
import static org.proviso.core.act.ActResults.why;
import static org.proviso.journey.Office.as;

import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.assertj.core.api.Condition;
import org.jspecify.annotations.Nullable;
import org.proviso.access.NotPermittedException;
import org.proviso.canvass.CanvassService;
import org.proviso.canvass.ClosingReport;
import org.proviso.canvass.steps.ClosingLine;
import org.proviso.canvass.steps.ClosingStep;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.core.chain.LedgerEntry;
import org.proviso.core.rules.Reason;
import org.proviso.database.OnADatabase;
import org.proviso.database.OnBothDatabases;
import org.proviso.database.TestOffice;
import org.proviso.election.ElectionService;
import org.proviso.election.rules.RulingService;
import org.proviso.election.rules.SignRuling;
import org.proviso.journey.Deciding;
import org.proviso.journey.NewerMailList;
import org.proviso.journey.Primary;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;
import org.proviso.release.Batch;
import org.proviso.release.BatchChangeService;
import org.proviso.release.KeptClosed;
import org.proviso.release.ReleaseService;
import org.proviso.review.CaseState;
import org.proviso.review.acts.AnswerService;
import org.proviso.review.decide.ContradictedDecision;
import org.proviso.review.decide.FollowUpService;
import org.proviso.review.replay.CaseReplay;
import org.springframework.dao.OptimisticLockingFailureException;

/** The list for the mail desk: who is on it, what waits for its answer, and what an answer changes. */
class MailListServiceTest {

    private static final ElectionId ELECTION = new ElectionId(Primary.ID);
    private static final String LISTED = "mail.counted_list_to_desk";
    private static final LocalDate TODAY = LocalDate.of(2026, 8, 7);

    /** Three envelopes decided to count; the voter of the second has a mail ballot that is not back. */
    private record Listed(TestOffice office, Primary primary) {

        private static final String[] THREE = {"in_order", "mail_outstanding", "inactive"};

        static Listed in(TestOffice office) {
            return in(office, LISTED, "yes");
        }

        static Listed in(TestOffice office, String rule, String value) {
            Primary primary = Primary.loaded(office);
            Listed listed = new Listed(office, primary);
            if (!rule.isEmpty()) {
                listed.ruled(rule, value);
            }
            primary.at(3, 10, 0);
            return listed;
        }

        /** A county ruling, recorded by one supervisor and put in force by another. */
        void ruled(String rule, String value) {
            RulingService rulings = office.the(RulingService.class);
            SignRuling ruling =
                    new SignRuling(ELECTION, rule, value, "County Clerk", LocalDate.of(2026, 7, 1), "counsel's letter");
            int number = accepted(as("carl", () -> rulings.record(ruling)));
            accepted(as("dora", () -> rulings.putInForce(ELECTION, number)));
        }

        Listed settled() {
            for (String scenario : THREE) {
                new Deciding(primary).settled(primary.envelope(scenario));
            }
            accepted(as("carl", () -> office.the(ReleaseService.class).recordOtherBallotsComplete(ELECTION)));
            return this;
        }

        EnvelopeKey key() {
            return primary.envelope("mail_outstanding");
        }

        EnvelopeNumber number() {
            return key().envelopeNo();
        }

        MailListService lists() {
            return office.the(MailListService.class);
        }

        List<MailLine> next() {
            return as("ada", () -> lists().next(ELECTION));
        }

        List<MailList> sent() {
            return as("ada", () -> lists().sent(ELECTION));
        }

        int open() {
            return as("ada", () -> lists().open(ELECTION));
        }

        int send() {
            List<MailLine> seen = next();
            return accepted(as("ada", () -> lists().send(ELECTION, seen)));
        }

        ActResult<Integer> answer(int listNo, @Nullable LocalDate on, String by, Map<Integer, DeskAnswer> answers) {
            return as("ada", () -> lists().record(new RecordDeskAnswers(ELECTION, listNo, on, by, answers)));
        }

        void answered(int listNo, DeskAnswer answer) {
            accepted(answer(listNo, TODAY, "Jane Roe", Map.of(1, answer)));
        }

        ActResult<Integer> correct(int seen, DeskAnswer answer, String because) {
            return as(
                    "ben",
                    () -> lists().correct(
                                    new CorrectDeskAnswer(ELECTION, 1, 1, seen, answer, TODAY, "Jane Roe", because)));
        }

        List<EnvelopeNumber> waiting() {
            return as("hal", () -> releases().waiting(ELECTION)).stream()
                    .map(envelope -> envelope.key().envelopeNo())
                    .toList();
        }

        Map<EnvelopeNumber, String> keptClosed() {
            return as("hal", () -> releases().keptClosed(ELECTION)).stream()
                    .collect(Collectors.toMap(closed -> closed.key().envelopeNo(), KeptClosed::because));
        }

        ReleaseService releases() {
            return office.the(ReleaseService.class);
        }

        ActResult<Batch> batch() {
            Set<EnvelopeNumber> all = new LinkedHashSet<>();
            for (String scenario : THREE) {
                all.add(primary.envelope(scenario).envelopeNo());
            }
            return as("hal", () -> releases().makeBatch(ELECTION, all, ""));
        }

        Batch batch1() {
            return as("hal", () -> releases().batch(ELECTION, 1));
        }

        ActResult<Batch> begin() {
            return as("hal", () -> releases().beginOpening(ELECTION, 1, batch1().version()));
        }

        List<ContradictedDecision> contradicted() {
            return as("eve", () -> office.the(FollowUpService.class).open(ELECTION));
        }

        ClosingReport missing() {
            return as("carl", () -> office.the(CanvassService.class).missing(ELECTION));
        }

        List<LedgerEntry> entries(String act) {
            return office.the(LedgerService.class).about(LedgerChain.of(ELECTION), number()).stream()
                    .filter(entry -> entry.act().equals(act))
                    .toList();
        }

        void replaysWhole() {
            assertThat(office.the(CaseReplay.class).replay(ELECTION).first()).isEmpty();
        }
    }

    private static List<String> named(List<ClosingLine> lines, ClosingStep step) {
        return lines.stream()
                .filter(line -> line.step() == step)
                .flatMap(line -> line.which().isEmpty()
                        ? List.of(String.valueOf(line.number())).stream()
                        : line.which().stream())
                .toList();
    }

    private static Condition<String> containing(String words) {
        return new Condition<>(because -> because.contains(words), "containing %s", words);
    }

    @OnADatabase
    void where_no_rule_asks_it_there_is_nothing_to_tell(TestOffice office) {
        Listed listed = Listed.in(office, "", "");
        new Deciding(listed.primary()).settled(listed.primary().envelope("in_order"));
        assertThat(as("ada", () -> listed.lists().isAsked(ELECTION))).isFalse();
        assertThat(listed.next()).isEmpty();
        assertThat(listed.open()).isZero();
        assertThat(listed.waiting())
                .containsExactly(listed.primary().envelope("in_order").envelopeNo());
        assertThat(why(as("ada", () -> listed.lists().send(ELECTION, List.of()))))
                .isEqualTo(Why.NOTHING_NEW);
    }

    @OnBothDatabases
    void an_envelope_whose_voter_has_a_mail_ballot_stays_closed_until_the_desk_answers(TestOffice office) {
        Listed listed = Listed.in(office).settled();
        assertThat(listed.next()).singleElement().satisfies(line -> {
            assertThat(line.key()).isEqualTo(listed.key());
            assertThat(line.kind()).isEqualTo(MailLine.Kind.REFUSE);
            assertThat(line.decision()).isOne();
            assertThat(line.voterId().value())
                    .isEqualTo(listed.primary().truth(listed.key()).voterId());
            assertThat(line.voterName()).contains(", ");
            assertThat(line.receiptNo()).isNotEmpty();
            assertThat(line.ballots()).startsWith("M2").contains(": outstanding");
        });
        assertThat(listed.waiting()).hasSize(2).doesNotContain(listed.number());
        assertThat(listed.keptClosed())
                .containsOnlyKeys(listed.number())
                .hasValueSatisfying(containing("The mail desk was not told yet"));
        assertThat(why(listed.batch())).isEqualTo(Why.NOT_IN_THIS_STATE);
        assertThat(named(listed.missing().missing(), ClosingStep.MAIL_DESK))
                .containsExactly(
                        listed.number() + ": the mail desk was not told yet to refuse the voter's mail ballot");
        assertThat(listed.send()).isOne();
        assertThat(listed.next()).isEmpty();
        assertThat(listed.open()).isOne();
        assertThat(named(listed.missing().missing(), ClosingStep.MAIL_DESK))
                .containsExactly(listed.number() + ": the mail desk has not answered list 1");
        assertThat(named(listed.missing().besides(), ClosingStep.MAIL_LINE)).isEmpty();
        assertThat(listed.waiting()).hasSize(2);
        assertThat(listed.keptClosed())
                .containsOnlyKeys(listed.number())
                .hasValueSatisfying(containing("The mail desk has not answered list 1"));
        listed.answered(1, DeskAnswer.REFUSED);
        assertThat(listed.waiting()).hasSize(3).contains(listed.number());
        assertThat(listed.keptClosed()).isEmpty();
        assertThat(listed.open()).isZero();
        assertThat(listed.contradicted()).isEmpty();
        assertThat(named(listed.missing().missing(), ClosingStep.MAIL_DESK)).isEmpty();
        listed.replaysWhole();
        assertThat(accepted(listed.batch()).envelopes()).isEqualTo(3);
        assertThat(listed.sent()).singleElement().satisfies(list -> {
            assertThat(list.sentBy()).isEqualTo("ada");
            assertThat(list.unanswered()).isZero();
        });
        assertThat(listed.entries("mail_list_sent"))
                .singleElement()
                .satisfies(entry -> assertThat(entry.payload())
                        .containsEntry("list", 1L)
                        .containsEntry("lines", 1L)
                        .doesNotContainValue(
                                listed.primary().truth(listed.key()).voterId()));
        office.jdbc().sql("update mail_desk_answer set answer = 'not_seen'").update();
        assertThat(office.the(CaseReplay.class).replay(ELECTION).first())
                .as("an answer changed behind the ledger's back")
                .isNotEmpty();
    }

    @OnBothDatabases
    void under_gives_way_a_ballot_that_came_back_is_listed_and_one_that_did_not_is_none(TestOffice office) {
        Listed listed = Listed.in(office, "mail.returned", "gives_way");
        EnvelopeKey key = listed.primary().envelope("in_order");
        new NewerMailList(listed.primary()).in(key, "returned").inUse();
        new Deciding(listed.primary()).settled(key);
        assertThat(listed.next()).extracting(MailLine::key).containsExactly(key);
        assertThat(listed.next().get(0).ballots()).contains("returned (08/03/2026)");
        assertThat(listed.waiting()).isEmpty();
        listed.send();
        listed.answered(1, DeskAnswer.NOT_SEEN);
        assertThat(listed.waiting()).containsExactly(key.envelopeNo());
        new NewerMailList(listed.primary()).in(key, "rejected").inUse();
        assertThat(listed.waiting()).containsExactly(key.envelopeNo());
        listed.replaysWhole();
    }

    @OnBothDatabases
    void already_counted_contradicts_the_decision_until_it_is_corrected(TestOffice office) {
        Listed listed = Listed.in(office).settled();
        listed.send();
        listed.answered(1, DeskAnswer.COUNTED);
        assertThat(listed.contradicted()).singleElement().satisfies(found -> {
            assertThat(found.key()).isEqualTo(listed.key());
            assertThat(found.says()).isEqualTo(Recommendation.REJECT);
            assertThat(found.reasons()).containsExactly(Reason.MAIL_BALLOT_ACCEPTED);
            assertThat(found.because()).contains("mail desk answered");
            assertThat(found.mustStayClosed()).isTrue();
        });
        assertThat(listed.waiting()).hasSize(2).doesNotContain(listed.number());
        listed.replaysWhole();
        assertThat(why(listed.correct(1, DeskAnswer.REFUSED, " "))).isEqualTo(Why.NO_REASON);
        assertThatThrownBy(() -> listed.correct(7, DeskAnswer.REFUSED, "It was another voter's."))
                .as("from a stale page")
                .isInstanceOf(OptimisticLockingFailureException.class);
        accepted(listed.correct(1, DeskAnswer.REFUSED, "It was another voter's."));
        assertThat(listed.contradicted()).isEmpty();
        assertThat(listed.waiting()).hasSize(3);
        assertThat(listed.sent().get(0).lines().get(0).given()).satisfies(given -> {
            assertThat(given.answer()).isEqualTo(DeskAnswer.REFUSED);
            assertThat(given.because()).isEqualTo("It was another voter's.");
            assertThat(given.recordedBy()).isEqualTo(new UserName("ben"));
        });
        listed.replaysWhole();
        accepted(listed.correct(2, DeskAnswer.COUNTED, "It was this voter's after all."));
        assertThat(listed.contradicted()).hasSize(1);
        listed.replaysWhole();
    }

    @OnBothDatabases
    void a_case_reopened_is_withdrawn_on_the_next_list_and_a_new_decision_is_a_new_line(TestOffice office) {
        Listed listed = Listed.in(office).settled();
        Deciding deciding = new Deciding(listed.primary());
        deciding.reopened(listed.key());
        assertThat(listed.next()).as("the desk was never told").isEmpty();
        deciding.settled(listed.key());
        listed.send();
        deciding.reopened(listed.key());
        assertThat(listed.next()).singleElement().satisfies(line -> {
            assertThat(line.kind()).isEqualTo(MailLine.Kind.WITHDRAWN);
            assertThat(line.decision()).isEqualTo(2);
        });
        assertThat(named(listed.missing().besides(), ClosingStep.MAIL_LINE))
                .as("the withdrawal to send, and the line the desk has not answered")
                .containsExactly("2");
        deciding.settled(listed.key());
        assertThat(listed.next())
                .as("counted again before the desk heard of it: a new line takes its place")
                .singleElement()
                .satisfies(line -> {
                    assertThat(line.kind()).isEqualTo(MailLine.Kind.REFUSE);
                    assertThat(line.decision()).isEqualTo(3);
                });
        listed.answered(1, DeskAnswer.REFUSED);
        assertThat(listed.waiting()).as("the answer was to the decision before").doesNotContain(listed.number());
        assertThat(listed.send()).isEqualTo(2);
        deciding.reopened(listed.key());
        assertThat(listed.send()).isEqualTo(3);
        assertThat(why(listed.answer(3, TODAY, "Jane Roe", Map.of(1, DeskAnswer.NOT_SEEN))))
                .as("no answer to a withdrawal")
                .isEqualTo(Why.MISTYPED);
        listed.answered(3, DeskAnswer.TAKEN_OFF);
        listed.answered(2, DeskAnswer.COUNTED);
        assertThat(listed.next()).isEmpty();
        assertThat(listed.primary().now(listed.key()).state()).isEqualTo(CaseState.OPEN);
        listed.replaysWhole();
        accepted(as(
                "ada",
                () -> office.the(org.proviso.review.acts.CaseAssignmentService.class)
                        .take(listed.key(), listed.primary().now(listed.key()).version())));
        assertThat(why(as(
                        "ada",
                        () -> office.the(AnswerService.class)
                                .withdrawAnswer(
                                        listed.key(),
                                        listed.primary().now(listed.key()).version(),
                                        Fact.MAIL_BALLOTS))))
                .as("the desk's word is corrected on its list")
                .isEqualTo(Why.NOT_ANSWERED_THIS_WAY);
    }

    @OnBothDatabases
    void in_a_sealed_batch_it_stops_itself_once_a_ruling_asks_the_desk(TestOffice office) {
        Listed listed = Listed.in(office, "", "");
        listed.primary().at(8, 10, 0);
        listed.settled();
        accepted(listed.batch());
        listed.ruled(LISTED, "yes");
        ActResult<Batch> refused = listed.begin();
        assertThat(why(refused)).isEqualTo(Why.MAIL_DESK_NOT_ANSWERED);
        assertThat(refused.refusals()).extracting(Refusal::about).containsExactly(listed.number());
        accepted(as(
                "hal",
                () -> office.the(BatchChangeService.class)
                        .takeOut(ELECTION, 1, listed.batch1().version(), listed.number(), "The mail desk is asked.")));
        accepted(listed.begin());
        assertThat(listed.next()).extracting(MailLine::key).containsExactly(listed.key());
    }

    @OnBothDatabases
    void what_cannot_be_is_refused_and_a_stale_page_changes_nothing(TestOffice office) {
        Listed listed = Listed.in(office).settled();
        List<MailLine> seen = listed.next();
        assertThatThrownBy(() -> as("hal", () -> listed.lists().send(ELECTION, seen)))
                .isInstanceOf(NotPermittedException.class);
        assertThatThrownBy(() -> as("ada", () -> listed.lists().send(ELECTION, List.of())))
                .isInstanceOf(OptimisticLockingFailureException.class);
        listed.send();
        assertThatThrownBy(() -> as("ben", () -> listed.lists().send(ELECTION, seen)))
                .as("twice")
                .isInstanceOf(OptimisticLockingFailureException.class);
        assertThat(listed.answer(1, null, " ", Map.of(1, DeskAnswer.REFUSED)).refusals())
                .extracting(Refusal::field)
                .containsExactly("answeredOn", "answeredBy");
        assertThat(why(listed.answer(1, TODAY.plusDays(1), "Jane Roe", Map.of(1, DeskAnswer.REFUSED))))
                .isEqualTo(Why.MOMENT_NOT_POSSIBLE);
        assertThat(why(listed.answer(1, TODAY.minusDays(1), "Jane Roe", Map.of(1, DeskAnswer.REFUSED))))
                .isEqualTo(Why.MOMENT_NOT_POSSIBLE);
        assertThat(why(listed.answer(1, TODAY, "Jane Roe", Map.of(9, DeskAnswer.REFUSED))))
                .isEqualTo(Why.NOTHING_NEW);
        assertThat(why(listed.answer(1, TODAY, "Jane Roe", Map.of(1, DeskAnswer.TAKEN_OFF))))
                .isEqualTo(Why.MISTYPED);
        listed.answered(1, DeskAnswer.REFUSED);
        assertThatThrownBy(() -> listed.answer(1, TODAY, "Jane Roe", Map.of(1, DeskAnswer.REFUSED)))
                .as("answered twice")
                .isInstanceOf(OptimisticLockingFailureException.class);
        office.inTransaction(() -> {
            office.the(ElectionService.class).close(ELECTION);
            return true;
        });
        assertThat(why(listed.correct(1, DeskAnswer.COUNTED, "Late word."))).isEqualTo(Why.ELECTION_CLOSED);
        assertThat(why(as("ada", () -> listed.lists().send(ELECTION, List.of()))))
                .isEqualTo(Why.ELECTION_CLOSED);
    }

    @OnADatabase
    void the_file_has_every_line_and_no_formula(TestOffice office) {
        Listed listed = Listed.in(office).settled();
        listed.send();
        office.jdbc()
                .sql("update mail_desk_line set voter_name = '=HYPERLINK(\"x\")'")
                .update();
        String file = as("ada", () -> listed.lists().file(ELECTION, 1)).orElseThrow();
        assertThat(file.lines().toList().get(0))
                .isEqualTo("list_no,line_no,what,voter_id,name,envelope_no,receipt_no,mail_ballots,answer");
        assertThat(file.lines().toList().get(1))
                .startsWith("1,1,refuse the mail ballot,")
                .contains("'=HYPERLINK", listed.number().value())
                .endsWith(",");
        assertThat(as("ada", () -> listed.lists().file(ELECTION, 2))).isEmpty();
    }
}
