package org.proviso.review.ends;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.proviso.core.act.ActResults.accepted;
import static org.proviso.journey.Office.as;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.proviso.access.NotPermittedException;
import org.proviso.canvass.CanvassService;
import org.proviso.canvass.steps.ClosingLine;
import org.proviso.canvass.steps.ClosingStep;
import org.proviso.core.CourtOrder;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.UserName;
import org.proviso.core.VoterId;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.core.chain.LedgerEntry;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.core.rules.Reason;
import org.proviso.database.OnADatabase;
import org.proviso.database.OnBothDatabases;
import org.proviso.database.TestOffice;
import org.proviso.election.ElectionService;
import org.proviso.election.orders.CourtOrderRecordService;
import org.proviso.election.orders.RecordCourtOrder;
import org.proviso.journey.Primary;
import org.proviso.ledger.Actor;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;
import org.proviso.review.CaseState;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.NewerRollFile;
import org.proviso.review.Proposal;
import org.proviso.review.ProposeOutcome;
import org.proviso.review.acts.AdministrativeEndService;
import org.proviso.review.acts.ProposalService;
import org.proviso.review.acts.RecordSearch;
import org.proviso.review.acts.SearchService;
import org.proviso.review.counts.CaseCountsService;
import org.proviso.review.decide.ContradictedDecision;
import org.proviso.review.decide.CourtOrderSettlementService;
import org.proviso.review.decide.DecidedCaseService;
import org.proviso.review.decide.FollowUpService;
import org.proviso.review.facts.OffRollReason;
import org.proviso.review.facts.SearchFound;
import org.proviso.review.facts.SearchPlace;
import org.proviso.review.file.CaseFileService;
import org.proviso.review.file.EndOfCase;
import org.proviso.review.news.NewListResult;
import org.proviso.review.news.NewerFileService;
import org.proviso.review.queue.ProposalToReview;
import org.proviso.review.queue.SecondReviewQueueService;
import org.proviso.review.replay.CaseReplay;
import org.proviso.roll.RollMatches;
import org.proviso.roll.SnapshotKind;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.transaction.support.TransactionTemplate;

/** An envelope is sent on, or its case closed without a decision, by two people; with a receipt and a way back. */
class EndsByTwoTest {

    private static final ElectionId ELECTION = new ElectionId(Primary.ID);
    private static final String COUNTY = "Birch County";

    /** The sample primary with an envelope of a voter of another county, which Ada has worked on and proposed to send on. */
    private record Proposed(TestOffice office, Primary primary, EnvelopeKey key) {

        static Proposed in(TestOffice office) {
            Primary primary = Primary.loaded(office);
            primary.at(3, 10, 0);
            EnvelopeKey key = primary.envelope("other_county");
            assertThat(primary.reviewing(key).proposed()).isEqualTo(Recommendation.SENT_ON);
            return new Proposed(office, primary, key);
        }

        AdministrativeEndService ends() {
            return office.the(AdministrativeEndService.class);
        }

        EndedCaseService ended() {
            return office.the(EndedCaseService.class);
        }

        int version() {
            return primary.now(key).version();
        }

        CaseState state() {
            return primary.now(key).state();
        }

        ActResult<EnvelopeCase> confirm(String who) {
            return as(who, () -> ends().confirm(key, version()));
        }

        Proposed sentOn() {
            assertThat(accepted(confirm("ben")).state()).isEqualTo(CaseState.SENT_ON);
            return this;
        }

        ActResult<EnvelopeCase> receipt(String who, @Nullable LocalDate day, String by) {
            return as(who, () -> ended().recordReceipt(new RecordCountyReceipt(key, version(), day, by, "B-77")));
        }

        ActResult<EnvelopeCase> reopen(String who, String because) {
            return as(who, () -> ended().reopen(key, version(), because));
        }

        List<ProposalToReview> waitsFor(String who) {
            return as(who, () -> office.the(SecondReviewQueueService.class).toRead(ELECTION, 0, 10));
        }

        int countedFor(String who) {
            return as(who, () -> office.the(CaseCountsService.class).of(ELECTION))
                    .forYouToReadSecond();
        }

        EndOfCase end() {
            return as("ada", () -> office.the(CaseFileService.class).open(key))
                    .orElseThrow()
                    .work()
                    .end();
        }

        List<EnvelopeKey> contradicted() {
            return as("dora", () -> office.the(FollowUpService.class).open(ELECTION)).stream()
                    .map(ContradictedDecision::key)
                    .toList();
        }

        List<ClosingLine> withoutReceipt() {
            return as("carl", () -> office.the(CanvassService.class).missing(ELECTION)).besides().stream()
                    .filter(line -> line.step() == ClosingStep.COUNTY_RECEIPT)
                    .toList();
        }

        LedgerEntry last() {
            return office.the(LedgerService.class).about(LedgerChain.of(ELECTION), key.envelopeNo()).stream()
                    .reduce((first, second) -> second)
                    .orElseThrow();
        }

        int ordered(CourtOrder.Kind kind) {
            return accepted(as(
                            "carl",
                            () -> office.the(CourtOrderRecordService.class)
                                    .record(new RecordCourtOrder(
                                            ELECTION,
                                            kind,
                                            "Tamarack County Circuit Court",
                                            primary.day(),
                                            "One envelope",
                                            CourtOrder.Status.IN_FORCE,
                                            null,
                                            Set.of(key.envelopeNo())))))
                    .orderNo();
        }

        void setAside(int orderNo) {
            CourtOrderRecordService orders = office.the(CourtOrderRecordService.class);
            int seen = as("carl", () -> orders.all(ELECTION)).get(orderNo - 1).version();
            accepted(as("carl", () -> orders.change(ELECTION, orderNo, seen, CourtOrder.Status.SET_ASIDE)));
        }

        void replaysWhole() {
            assertThat(office.the(CaseReplay.class).replay(ELECTION).first()).isEmpty();
        }
    }

    private static List<Why> why(ActResult<?> result) {
        return result.refusals().stream().map(Refusal::why).toList();
    }

    @OnBothDatabases
    void one_person_proposes_to_send_on_and_another_confirms_it(TestOffice office) {
        Proposed proposed = Proposed.in(office);
        assertThat(proposed.state()).isEqualTo(CaseState.PROPOSED);
        assertThat(proposed.waitsFor("ada")).isEmpty();
        assertThat(proposed.countedFor("ada")).isZero();
        assertThat(proposed.countedFor("ben")).isEqualTo(1);
        assertThat(proposed.waitsFor("ben")).singleElement().satisfies(waits -> {
            assertThat(waits.envelopeNo()).isEqualTo(proposed.key().envelopeNo());
            assertThat(waits.words()).isEqualTo("send on to Birch County");
            assertThat(waits.reasons()).containsExactly(Reason.REGISTERED_ELSEWHERE);
        });
        assertThatThrownBy(() -> proposed.confirm("ada")).isInstanceOf(NotPermittedException.class);
        assertThat(proposed.state()).as("nobody confirms their own").isEqualTo(CaseState.PROPOSED);
        proposed.replaysWhole();
        int seen = proposed.version();
        proposed.sentOn();
        assertThat(proposed.last().act()).isEqualTo("sent_on");
        assertThat(proposed.last().payload()).containsEntry("proposal", 1L);
        assertThat(proposed.waitsFor("ben")).isEmpty();
        assertThatThrownBy(() -> as("ben", () -> proposed.ends().confirm(proposed.key(), seen)))
                .as("from a stale page")
                .isInstanceOf(OptimisticLockingFailureException.class);
        assertThat(why(proposed.confirm("ben"))).as("a second time").containsExactly(Why.NOT_IN_THIS_STATE);
        proposed.replaysWhole();
    }

    @OnBothDatabases
    void the_second_person_sends_it_back_with_a_reason_and_the_proposer_takes_it_back(TestOffice office) {
        Proposed proposed = Proposed.in(office);
        EnvelopeKey key = proposed.key();
        ProposalService outcomes = office.the(ProposalService.class);
        assertThat(why(as("ben", () -> outcomes.secondReview(key, proposed.version(), true, ""))))
                .as("no outcome is proposed")
                .containsExactly(Why.NOT_PROPOSED);
        assertThat(why(as("ben", () -> outcomes.withdraw(key, proposed.version()))))
                .containsExactly(Why.NOT_WITH_YOU);
        accepted(as("ada", () -> outcomes.withdraw(key, proposed.version())));
        assertThat(proposed.primary().now(key).isWith(new UserName("ada"))).isTrue();
        assertThat(proposed.waitsFor("ben")).isEmpty();
        assertThat(why(as("ada", () -> proposed.ends().proposeToSendOn(key, proposed.version(), " "))))
                .as("to which county")
                .containsExactly(Why.NO_REASON);
        assertThat(why(as("ada", () -> proposed.ends().proposeToEnd(key, proposed.version()))))
                .as("the rules do not say so")
                .containsExactly(Why.NOT_AS_RECOMMENDED);
        accepted(as("ada", () -> proposed.ends().proposeToSendOn(key, proposed.version(), COUNTY)));
        assertThat(why(as("ben", () -> proposed.ends().sendBack(key, proposed.version(), " "))))
                .containsExactly(Why.NO_REASON);
        assertThatThrownBy(() -> as("ada", () -> proposed.ends().sendBack(key, proposed.version(), "Mine.")))
                .isInstanceOf(NotPermittedException.class);
        accepted(as("ben", () -> proposed.ends().sendBack(key, proposed.version(), "Which county?")));
        assertThat(proposed.state()).isEqualTo(CaseState.OPEN);
        assertThat(proposed.end().proposed()).hasValueSatisfying(returned -> {
            assertThat(returned.proposal().state()).isEqualTo(Proposal.State.RETURNED);
            assertThat(returned.proposal().note()).isEqualTo("Which county?");
        });
        assertThat(why(proposed.confirm("ben"))).containsExactly(Why.NOT_IN_THIS_STATE);
        proposed.replaysWhole();
    }

    @OnBothDatabases
    void the_other_countys_receipt_is_recorded_once_and_closing_does_not_wait_for_it(TestOffice office) {
        Proposed proposed = Proposed.in(office);
        LocalDate today = proposed.primary().day().plusDays(3);
        assertThat(why(proposed.receipt("ada", today, "Jane Roe"))).containsExactly(Why.NOT_IN_THIS_STATE);
        assertThat(proposed.withoutReceipt()).isEmpty();
        proposed.sentOn();
        assertThat(proposed.withoutReceipt())
                .extracting(ClosingLine::which)
                .containsExactly(List.of(proposed.key().envelopeNo().value()));
        assertThat(why(proposed.receipt("ada", null, " "))).containsExactly(Why.MISTYPED, Why.NO_REASON);
        assertThat(why(proposed.receipt("ada", today.plusDays(1), "Jane Roe")))
                .as("a day to come")
                .containsExactly(Why.MOMENT_NOT_POSSIBLE);
        assertThat(why(proposed.receipt("ada", today.minusDays(1), "Jane Roe")))
                .as("before it was sent on")
                .containsExactly(Why.MOMENT_NOT_POSSIBLE);
        int seen = proposed.version();
        accepted(proposed.receipt("ada", today, "Jane Roe"));
        assertThat(proposed.state()).isEqualTo(CaseState.SENT_ON);
        assertThatThrownBy(() -> as(
                        "ben",
                        () -> proposed.ended()
                                .recordReceipt(
                                        new RecordCountyReceipt(proposed.key(), seen, today, "Somebody else", ""))))
                .isInstanceOf(OptimisticLockingFailureException.class);
        assertThat(why(proposed.receipt("ben", today, "Somebody else"))).containsExactly(Why.NOTHING_NEW);
        assertThat(proposed.withoutReceipt()).isEmpty();
        assertThat(proposed.end().receiptWords())
                .hasValue("Envelope " + proposed.key().envelopeNo() + " was received there on 08/07/2026 by Jane Roe,"
                        + " number B-77.");
        assertThat(proposed.last().payload())
                .containsEntry("received_on", today.toString())
                .doesNotContainValue("Jane Roe");
        proposed.replaysWhole();
    }

    @OnBothDatabases
    void a_decider_or_a_supervisor_reopens_it_until_closing_and_the_receipt_is_named(TestOffice office) {
        Proposed proposed = Proposed.in(office).sentOn();
        accepted(proposed.receipt("ada", proposed.primary().day().plusDays(3), "Jane Roe"));
        assertThatThrownBy(() -> proposed.reopen("ada", "It came back.")).isInstanceOf(NotPermittedException.class);
        assertThat(why(proposed.reopen("dora", " "))).containsExactly(Why.NO_REASON);
        accepted(proposed.reopen("dora", "It came back."));
        assertThat(proposed.state()).isEqualTo(CaseState.OPEN);
        assertThat(proposed.last().payload()).containsEntry("county_receipt", 1L);
        assertThat(proposed.end().receipt()).isEmpty();
        assertThat(why(proposed.reopen("dora", "Again."))).containsExactly(Why.NOT_IN_THIS_STATE);
        proposed.replaysWhole();
        proposed.primary().reviewing(proposed.key()).work();
        assertThat(proposed.withoutReceipt())
                .as("the old receipt holds no more")
                .hasSize(1);
        accepted(as(
                "eve",
                () -> office.the(DecidedCaseService.class)
                        .reopen(proposed.key(), proposed.version(), "It came back once more.")));
        assertThat(proposed.last().payload()).doesNotContainKey("county_receipt");
        proposed.replaysWhole();
    }

    @OnBothDatabases
    void a_case_without_a_vote_is_closed_by_two_and_reopened(TestOffice office) {
        Primary primary = Primary.loaded(office);
        primary.at(3, 10, 0);
        EnvelopeKey key = primary.envelope("withdrawn");
        assertThat(primary.reviewing(key).proposed()).isEqualTo(Recommendation.ADMINISTRATIVE_END);
        Proposed proposed = new Proposed(office, primary, key);
        assertThat(proposed.waitsFor("ben"))
                .extracting(ProposalToReview::words)
                .containsExactly("close without a decision");
        assertThatThrownBy(() -> proposed.confirm("ada")).isInstanceOf(NotPermittedException.class);
        assertThat(accepted(proposed.confirm("ben")).state()).isEqualTo(CaseState.ENDED);
        assertThat(proposed.withoutReceipt()).isEmpty();
        assertThat(why(proposed.receipt("ada", primary.day(), "Jane Roe"))).containsExactly(Why.NOT_IN_THIS_STATE);
        accepted(proposed.reopen("eve", "The voter says that nothing was withdrawn."));
        assertThat(proposed.state()).isEqualTo(CaseState.OPEN);
        proposed.replaysWhole();
    }

    @OnADatabase
    void nothing_of_it_is_done_after_closing(TestOffice office) {
        Proposed proposed = Proposed.in(office);
        office.inTransaction(() -> {
            office.the(ElectionService.class).close(ELECTION);
            return ELECTION;
        });
        assertThat(why(proposed.confirm("ben"))).containsExactly(Why.ELECTION_CLOSED);
        assertThat(why(as("ben", () -> proposed.ends().sendBack(proposed.key(), proposed.version(), "No."))))
                .containsExactly(Why.ELECTION_CLOSED);
        assertThat(why(proposed.reopen("dora", "It came back."))).containsExactly(Why.ELECTION_CLOSED);
        assertThat(why(proposed.receipt("ada", proposed.primary().day(), "Jane Roe")))
                .containsExactly(Why.ELECTION_CLOSED);
    }

    @OnBothDatabases
    void while_a_court_holds_the_envelope_it_stays_here_and_the_proposal_can_be_sent_back(TestOffice office) {
        Proposed proposed = Proposed.in(office);
        proposed.ordered(CourtOrder.Kind.HOLD);
        assertThat(why(proposed.confirm("ben"))).containsExactly(Why.HELD_BY_COURT);
        accepted(as("ben", () -> proposed.ends().sendBack(proposed.key(), proposed.version(), "A court holds it.")));
        proposed.primary().taken(proposed.key(), new UserName("ada"));
        assertThat(why(as("ada", () -> proposed.ends().proposeToSendOn(proposed.key(), proposed.version(), COUNTY))))
                .containsExactly(Why.HELD_BY_COURT);
        proposed.replaysWhole();
    }

    @OnBothDatabases
    void an_order_to_preserve_stands_against_sending_on_and_one_to_reject_settles_it(TestOffice office) {
        Proposed proposed = Proposed.in(office);
        proposed.ordered(CourtOrder.Kind.PRESERVE);
        assertThat(why(proposed.confirm("ben"))).containsExactly(Why.HELD_BY_COURT);
        int reject = proposed.ordered(CourtOrder.Kind.REJECT);
        as(
                "dora",
                () -> accepted(office.the(CourtOrderSettlementService.class)
                        .settle(proposed.key(), proposed.version(), reject)));
        assertThat(proposed.state()).isEqualTo(CaseState.DECIDED);
        assertThat(proposed.end().waits()).isEmpty();
        proposed.replaysWhole();
    }

    @OnBothDatabases
    void a_court_that_settles_what_was_sent_on_sets_the_receipt_aside_and_binds(TestOffice office) {
        Proposed proposed = Proposed.in(office).sentOn();
        accepted(proposed.receipt("ada", proposed.primary().day().plusDays(3), "Jane Roe"));
        int reject = proposed.ordered(CourtOrder.Kind.REJECT);
        assertThat(why(proposed.reopen("eve", "It came back."))).containsExactly(Why.HELD_BY_COURT);
        as(
                "dora",
                () -> accepted(office.the(CourtOrderSettlementService.class)
                        .settle(proposed.key(), proposed.version(), reject)));
        assertThat(proposed.end().receipt()).isEmpty();
        proposed.replaysWhole();
    }

    /** The voter of an envelope in order is on no roll yet, and the search finds a registration in another county. */
    private static Proposed foundElsewhere(TestOffice office) throws IOException {
        Primary primary = Primary.loaded(office);
        EnvelopeKey key = primary.envelope("in_order");
        office.the(RollMatches.class).prepare(ELECTION);
        roll(office, new NewerRollFile().remove(new VoterId(primary.truth(key).voterId())));
        primary.at(3, 10, 0);
        EnvelopeCase taken = primary.taken(key, new UserName("ada"));
        accepted(as(
                "ada",
                () -> office.the(SearchService.class)
                        .record(new RecordSearch(
                                key,
                                taken.version(),
                                EnumSet.allOf(SearchPlace.class),
                                SearchFound.OTHER_COUNTY,
                                OffRollReason.NOT_ON_THE_ROLL,
                                null,
                                ""))));
        Proposed proposed = new Proposed(office, primary, key);
        accepted(as("ada", () -> proposed.ends().proposeToSendOn(key, proposed.version(), COUNTY)));
        return proposed;
    }

    private static void roll(TestOffice office, NewerRollFile newer) throws IOException {
        Path folder = Files.createTempDirectory("roll");
        Path file = newer.in(folder);
        NewerFileService files = office.the(NewerFileService.class);
        NewListResult brought = as("carl", () -> files.load(ELECTION, SnapshotKind.ROLL, file));
        if (brought instanceof NewListResult.WaitsForSecond waits) {
            as("dora", () -> files.confirm(ELECTION, waits.snapshotNo()));
        }
        Files.delete(file);
        Files.delete(folder);
    }

    @OnBothDatabases
    void a_newer_roll_that_has_the_voter_recalls_the_proposal(TestOffice office) throws IOException {
        Proposed proposed = foundElsewhere(office);
        assertThat(proposed.waitsFor("ben")).hasSize(1);
        roll(office, new NewerRollFile());
        assertThat(proposed.state()).isEqualTo(CaseState.OPEN);
        assertThat(proposed.end().waits()).isEmpty();
        assertThat(proposed.waitsFor("ben")).isEmpty();
        proposed.replaysWhole();
    }

    @OnBothDatabases
    void one_that_is_sent_on_and_contradicted_gets_its_receipt_and_is_reopened_by_a_supervisor(TestOffice office)
            throws IOException {
        Proposed proposed = foundElsewhere(office).sentOn();
        roll(office, new NewerRollFile());
        assertThat(proposed.contradicted()).containsExactly(proposed.key());
        accepted(proposed.receipt("ada", proposed.primary().day().plusDays(3), "Jane Roe"));
        assertThat(proposed.contradicted()).as("a receipt settles nothing").containsExactly(proposed.key());
        accepted(proposed.reopen("dora", "The voter is on the newer roll."));
        assertThat(proposed.contradicted()).isEmpty();
        proposed.replaysWhole();
    }

    @OnADatabase
    void an_end_that_one_person_recorded_before_it_took_two_still_replays(TestOffice office) {
        Primary primary = Primary.loaded(office);
        EnvelopeKey key = primary.envelope("other_county");
        primary.taken(key, new UserName("ada"));
        office.jdbc()
                .sql(
                        "update envelope_case set state = 'sent_on', taken_by = null, taken_at = null, version = version + 1"
                                + " where envelope_no = ?")
                .param(key.envelopeNo().value())
                .update();
        office.inTransaction(() -> office.the(LedgerService.class)
                .record(
                        LedgerChain.of(ELECTION),
                        Actor.SYSTEM,
                        "sent_on",
                        key.envelopeNo().value(),
                        Map.of("assessment", 1, "reasons", List.of("registered_elsewhere"))));
        Proposed proposed = new Proposed(office, primary, key);
        proposed.replaysWhole();
        assertThat(proposed.withoutReceipt()).hasSize(1);
        accepted(proposed.receipt("ada", primary.day(), "Jane Roe"));
        accepted(proposed.reopen("eve", "It came back."));
        proposed.replaysWhole();
    }

    @OnBothDatabases
    void what_was_changed_behind_the_ledger_is_named(TestOffice office) {
        Proposed proposed = Proposed.in(office).sentOn();
        accepted(proposed.receipt("ada", proposed.primary().day().plusDays(3), "Jane Roe"));
        Map<String, String> changes = Map.of(
                "end_proposal set to_county = 'Elm County'", "proposal to end 1 has another to county than",
                "end_proposal set read_by = 'carl'", "proposal to end 1 has another read by than",
                "end_proposal set state = 'standing'", "proposal to end 1 has another state than",
                "county_receipt set received_by = 'John Doe'",
                        "receipt of another county 1 has another received by than",
                "county_receipt set received_on = received_on - interval '1' day",
                        "receipt of another county 1 has another received on than",
                "county_receipt set set_aside_at = recorded_at",
                        "receipt of another county 1 has another set aside at than");
        changes.forEach((change, named) -> office.the(TransactionTemplate.class).executeWithoutResult(attempt -> {
            office.jdbc().sql("update " + change).update();
            assertThat(office.the(CaseReplay.class).replay(ELECTION).first())
                    .singleElement()
                    .satisfies(said -> assertThat(said).contains(named));
            attempt.setRollbackOnly();
        }));
        proposed.replaysWhole();
    }

    /** An order that settles a case leaves its proposal as it was, so an older one may stand beside a later end. */
    @OnBothDatabases
    void an_older_proposal_that_an_order_overtook_is_left_alone_by_the_end(TestOffice office) {
        Proposed proposed = Proposed.in(office);
        EnvelopeKey key = proposed.key();
        ProposalService outcomes = office.the(ProposalService.class);
        accepted(as("ada", () -> outcomes.withdraw(key, proposed.version())));
        accepted(as(
                "ada",
                () -> outcomes.propose(new ProposeOutcome(
                        key,
                        proposed.version(),
                        DecisionOutcome.REJECT,
                        List.of(Reason.NOT_REGISTERED),
                        "Example Election Code (invented) 2.1 (2020)",
                        "The other county does not know the voter."))));
        int reject = proposed.ordered(CourtOrder.Kind.REJECT);
        accepted(as(
                "dora", () -> office.the(CourtOrderSettlementService.class).settle(key, proposed.version(), reject)));
        proposed.setAside(reject);
        accepted(as(
                "eve",
                () -> office.the(DecidedCaseService.class).reopen(key, proposed.version(), "It was set aside.")));
        proposed.primary().taken(key, new UserName("ben"));
        accepted(as("ben", () -> proposed.ends().proposeToSendOn(key, proposed.version(), COUNTY)));
        assertThat(proposed.waitsFor("ben")).isEmpty();
        assertThat(proposed.countedFor("ben")).isZero();
        assertThat(proposed.waitsFor("ada"))
                .extracting(ProposalToReview::words)
                .containsExactly("send on to Birch County");
        assertThat(why(as("ada", () -> outcomes.withdraw(key, proposed.version()))))
                .as("it is Ben's proposal that waits")
                .containsExactly(Why.NOT_WITH_YOU);
        accepted(
                as("eve", () -> office.the(DecidedCaseService.class).sendBack(key, proposed.version(), "Look again.")));
        proposed.replaysWhole();
    }

    @OnADatabase
    void the_form_says_what_was_found_and_who_signed_and_nothing_of_a_voter(TestOffice office) {
        Proposed proposed = Proposed.in(office);
        assertThat(as("ada", () -> proposed.ended().form(proposed.key()))).isEmpty();
        proposed.sentOn();
        SentOnForm form = as("ada", () -> proposed.ended().form(proposed.key())).orElseThrow();
        assertThat(form.toCounty()).isEqualTo(COUNTY);
        assertThat(form.found()).containsExactly(Reason.REGISTERED_ELSEWHERE);
        assertThat(form.legalReference()).isEqualTo("Example Election Code (invented) 2.6 (2020)");
        assertThat(List.of(form.proposedBy(), form.confirmedBy())).doesNotHaveDuplicates();
        accepted(proposed.reopen("eve", "It came back."));
        assertThat(as("ada", () -> proposed.ended().form(proposed.key()))).isEmpty();
    }
}
