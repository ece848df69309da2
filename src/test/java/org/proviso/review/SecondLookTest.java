package org.proviso.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.journey.Office.accepted;
import static org.proviso.journey.Office.as;
import static org.proviso.journey.Primary.why;

import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.proviso.access.LedgerReadService;
import org.proviso.canvass.observers.ObserverCaseService;
import org.proviso.canvass.observers.ObserverLedgerService;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;
import org.proviso.core.VoterId;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.SignatureComparisonFact;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.core.chain.LedgerEntry;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.core.rules.Reason;
import org.proviso.database.OnADatabase;
import org.proviso.database.OnBothDatabases;
import org.proviso.database.TestOffice;
import org.proviso.journey.Primary;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;
import org.proviso.review.acts.AnswerService;
import org.proviso.review.acts.CaseAssignmentService;
import org.proviso.review.acts.ConfirmLink;
import org.proviso.review.acts.LinkService;
import org.proviso.review.acts.ProposalService;
import org.proviso.review.assess.AssessmentService;
import org.proviso.review.facts.AnswerKind;
import org.proviso.review.facts.AnswerStore;
import org.proviso.review.facts.RecordedAnswer;
import org.proviso.review.facts.SignatureComparison;
import org.proviso.review.file.CaseFile;
import org.proviso.review.file.CaseFileService;
import org.proviso.review.file.HistoryEntry;
import org.proviso.review.file.HistoryService;
import org.proviso.review.queue.QueueFilter;
import org.proviso.review.queue.QueueRow;
import org.proviso.review.queue.QueueService;
import org.proviso.review.queue.SecondReviewQueueService;
import org.proviso.review.replay.CaseReplay;

/** Ada found a signature different. Whoever looks second knows nothing of it, or their look is not an independent one. */
class SecondLookTest {

    private static final ElectionId ELECTION = new ElectionId(Primary.ID);
    private static final LedgerChain CHAIN = LedgerChain.of(ELECTION);

    private record AtWork(TestOffice services, Primary primary, EnvelopeKey key) {

        /** Ada took the case, linked it, found the signature different, and gave the case back. */
        static AtWork on(TestOffice services) {
            Primary primary = Primary.loaded(services);
            AtWork work = new AtWork(services, primary, primary.envelope("another_hand"));
            work.take("ada");
            VoterId voter = new VoterId(primary.truth(work.key).voterId());
            accepted(as(
                    "ada",
                    () -> services.the(LinkService.class)
                            .confirm(new ConfirmLink(work.key, work.version(), voter, "Compared by hand."))));
            accepted(work.look("ada"));
            work.giveBack("ada");
            return work;
        }

        int version() {
            return primary.now(key).version();
        }

        void take(String who) {
            primary.taken(key, new UserName(who));
        }

        void giveBack(String who) {
            accepted(as(who, () -> services.the(CaseAssignmentService.class).giveBack(key, version())));
        }

        ActResult<EnvelopeCase> look(String who) {
            return as(
                    who,
                    () -> services.the(AnswerService.class)
                            .recordSignatureComparison(new SignatureComparison(
                                    key, version(), SignatureComparison.Finding.DIFFERS, "The loops lean back.")));
        }

        CaseFile file(String who) {
            return as(who, () -> services.the(CaseFileService.class).open(key).orElseThrow());
        }

        SignatureComparisonFact known(CaseFile file) {
            return file.report().presumed().facts().one(Fact.SIGNATURE_COMPARISON);
        }

        SignatureComparisonFact now() {
            return services.the(AssessmentService.class)
                    .now(key)
                    .settled()
                    .facts()
                    .one(Fact.SIGNATURE_COMPARISON);
        }

        List<AnswerKind> looks() {
            return services.the(AnswerStore.class).standing(key).stream()
                    .map(RecordedAnswer::kind)
                    .toList();
        }

        /** The acts on the case in the ledger, with what they say in clear. */
        List<String> ledger(String act) {
            return services.the(LedgerService.class).about(CHAIN, key.envelopeNo()).stream()
                    .filter(entry -> entry.act().equals(act))
                    .map(entry -> entry.payload().toString())
                    .toList();
        }

        void proposed() {
            take("ada");
            accepted(as(
                    "ada",
                    () -> services.the(ProposalService.class)
                            .propose(new ProposeOutcome(
                                    key,
                                    version(),
                                    DecisionOutcome.REJECT,
                                    List.of(Reason.REGISTERED_LATE),
                                    "Example Election Code (invented) 5.5 (2020)",
                                    "The stamp is a day later."))));
        }

        void sentBack(String who) {
            accepted(as(
                    who,
                    () -> services.the(ProposalService.class)
                            .secondReview(key, version(), false, "Look at the roll.")));
        }

        void replaysWhole() {
            assertThat(services.the(CaseReplay.class).replay(ELECTION).first()).isEmpty();
        }
    }

    @OnBothDatabases
    void a_case_is_to_the_second_reviewer_as_if_nobody_had_looked(TestOffice services) {
        AtWork work = AtWork.on(services);
        assertThat(work.known(work.file("ada"))).isEqualTo(SignatureComparisonFact.DIFFERS_BY_ONE);
        assertThat(work.known(work.file("eve")))
                .as("a decider looks at no signature")
                .isEqualTo(SignatureComparisonFact.DIFFERS_BY_ONE);
        CaseFile blind = work.file("ben");
        assertThat(work.known(blind)).isEqualTo(SignatureComparisonFact.NOT_YET);
        assertThat(blind.work().answers()).isEmpty();
        work.take("ben");
        assertThat(work.known(work.file("ben"))).isEqualTo(SignatureComparisonFact.NOT_YET);
        accepted(work.look("ben"));
        assertThat(work.now()).isEqualTo(SignatureComparisonFact.DIFFERS_BY_TWO);
        assertThat(work.looks()).containsExactly(AnswerKind.FIRST_SIGNATURE_LOOK, AnswerKind.SECOND_SIGNATURE_LOOK);
        assertThat(work.known(work.file("ben"))).isEqualTo(SignatureComparisonFact.DIFFERS_BY_TWO);
        assertThat(work.ledger("signature_finding_seen")).isEmpty();
        work.replaysWhole();
    }

    @OnBothDatabases
    void no_list_and_no_page_of_the_ledger_tells_of_the_first_look(TestOffice services) {
        AtWork work = AtWork.on(services);
        List<String> told = new ArrayList<>();
        as("ben", () -> {
            services.the(HistoryService.class).of(work.key()).stream()
                    .map(HistoryEntry::act)
                    .forEach(told::add);
            services.the(LedgerReadService.class).read(CHAIN, 0, 10_000).stream()
                    .filter(entry ->
                            entry.subject().equals(work.key().envelopeNo().value()))
                    .map(LedgerEntry::payload)
                    .map(Object::toString)
                    .forEach(told::add);
            services.the(ObserverLedgerService.class).acts(ELECTION, 0, 10_000).newestFirst().stream()
                    .filter(entry ->
                            entry.subject().equals(work.key().envelopeNo().value()))
                    .map(LedgerEntry::payload)
                    .map(Object::toString)
                    .forEach(told::add);
            told.add(services.the(ObserverCaseService.class)
                    .find(work.key())
                    .orElseThrow()
                    .toString());
            return told;
        });
        assertThat(told)
                .hasSizeGreaterThan(5)
                .noneMatch(line -> line.contains("answer_given"))
                .noneMatch(line -> line.contains("differ"))
                .noneMatch(line -> line.contains("signature_look"))
                .noneMatch(line -> line.contains("independent"));
        assertThat(as("gil", () -> services.the(LedgerReadService.class).read(CHAIN, 0, 10_000))
                        .toString())
                .as("who looks at no signature reads it")
                .contains("differs_by_one");
        assertThat(work.ledger("signature_finding_seen")).isEmpty();
    }

    @OnBothDatabases
    void the_queue_hands_it_out_in_its_turn_and_never_to_who_has_looked(TestOffice services) {
        AtWork work = AtWork.on(services);
        QueueService queue = services.the(QueueService.class);
        QueueRow row = as("ben", () -> queue.page(QueueFilter.all(ELECTION), 0, 1_000)).stream()
                .filter(one -> one.envelopeNo().equals(work.key().envelopeNo()))
                .findFirst()
                .orElseThrow();
        assertThat(row.turn().words()).isEqualTo("in order received");
        assertThat(row.outlook()).as("as of a case that nobody looked at").isEqualTo(Recommendation.COUNT);
        List<EnvelopeNumber> others = as("ben", () -> queue.page(QueueFilter.all(ELECTION), 0, 1_000)).stream()
                .map(QueueRow::envelopeNo)
                .filter(number -> !number.equals(work.key().envelopeNo()))
                .toList();
        assertThat(as("ada", () -> queue.takeNext(ELECTION, others))).isEmpty();
        assertThat(nextSignature(work, "ada")).isNotEqualTo(Optional.of(work.key()));
        assertThat(nextSignature(work, "ben")).contains(work.key());
        assertThat(as("ben", () -> queue.takeNext(ELECTION, others)).orElseThrow())
                .isInstanceOf(ActResult.Accepted.class);
        assertThat(work.primary().now(work.key()).takenBy()).isEqualTo(new UserName("ben"));
    }

    /** What the pile of signatures has next after the envelope before this one. */
    private static Optional<EnvelopeKey> nextSignature(AtWork work, String who) {
        int number = Integer.parseInt(work.key().envelopeNo().value().substring(2));
        return as(
                        who,
                        () -> work.services()
                                .the(SecondReviewQueueService.class)
                                .signature(ELECTION, "P-" + (number - 1)))
                .map(turn -> turn.seen().key());
    }

    @OnBothDatabases
    void who_saw_the_finding_in_a_second_review_has_no_independent_look(TestOffice services) {
        AtWork work = AtWork.on(services);
        work.proposed();
        assertThat(work.known(work.file("ben"))).isEqualTo(SignatureComparisonFact.DIFFERS_BY_ONE);
        assertThat(work.known(work.file("ben"))).isEqualTo(SignatureComparisonFact.DIFFERS_BY_ONE);
        assertThat(work.ledger("signature_finding_seen")).as("noted once").containsExactly("{answer=1}");
        work.sentBack("ben");
        assertThat(nextSignature(work, "ben")).isNotEqualTo(Optional.of(work.key()));
        assertThat(why(work.look("ben"))).as("by itself a look needs the case").isEqualTo(Why.NOT_WITH_YOU);
        work.take("ben");
        assertThat(work.known(work.file("ben"))).isEqualTo(SignatureComparisonFact.DIFFERS_BY_ONE);
        accepted(work.look("ben"));
        assertThat(work.now()).isEqualTo(SignatureComparisonFact.DIFFERS_BY_ONE);
        assertThat(work.looks()).containsExactly(AnswerKind.FIRST_SIGNATURE_LOOK, AnswerKind.FIRST_SIGNATURE_LOOK);
        assertThat(work.ledger("answer_given").get(1)).contains("independent=false");
        assertThat(why(work.look("ben"))).isEqualTo(Why.OWN_ACT);
        work.giveBack("ben");
        assertThat(why(work.look("ada"))).as("her own look came first").isEqualTo(Why.OWN_ACT);
        accepted(work.look("carl"));
        assertThat(work.now()).isEqualTo(SignatureComparisonFact.DIFFERS_BY_TWO);
        work.replaysWhole();
    }

    @OnADatabase
    void who_takes_the_ledger_out_as_a_file_has_no_independent_look(TestOffice services) {
        AtWork work = AtWork.on(services);
        as("ben", () -> {
            services.the(LedgerReadService.class).export(CHAIN, new StringWriter());
            return true;
        });
        assertThat(work.ledger("signature_finding_seen")).containsExactly("{answer=1}");
        assertThat(work.known(work.file("carl"))).isEqualTo(SignatureComparisonFact.NOT_YET);
        work.take("ben");
        accepted(work.look("ben"));
        assertThat(work.now()).isEqualTo(SignatureComparisonFact.DIFFERS_BY_ONE);
        work.replaysWhole();
    }
}
