package org.proviso.release;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.proviso.core.act.ActResults.accepted;
import static org.proviso.core.act.ActResults.field;
import static org.proviso.core.act.ActResults.why;
import static org.proviso.journey.Office.as;

import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.proviso.access.NotPermittedException;
import org.proviso.core.CourtOrder;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.database.OnBothDatabases;
import org.proviso.database.TestOffice;
import org.proviso.election.orders.CourtOrderRecordService;
import org.proviso.election.orders.RecordCourtOrder;
import org.proviso.journey.Deciding;
import org.proviso.journey.Primary;
import org.proviso.review.CaseState;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.decide.CourtOrderSettlementService;
import org.proviso.review.decide.DecidedCaseService;
import org.proviso.review.decide.DecisionService;
import org.proviso.review.replay.CaseReplay;

/** A batch before it is opened: what was decided to count may have to stay closed, and never holds the others back. */
class BatchChangeServiceTest {

    private static final ElectionId ELECTION = new ElectionId(Primary.ID);
    private static final String[] THREE = {"in_order", "inactive", "wrong_style"};

    /** Three decided envelopes in batch 1, one of them to be remade. */
    private record Sealed(Primary primary, ReleaseService releases, BatchChangeService changes) {

        static Sealed in(TestOffice services) {
            Primary primary = Primary.loaded(services);
            primary.at(3, 10, 0);
            Deciding deciding = new Deciding(primary);
            Set<EnvelopeNumber> numbers = new LinkedHashSet<>();
            for (String scenario : THREE) {
                deciding.settled(primary.envelope(scenario));
                numbers.add(primary.envelope(scenario).envelopeNo());
            }
            ReleaseService releases = services.the(ReleaseService.class);
            accepted(as("carl", () -> releases.recordOtherBallotsComplete(ELECTION)));
            accepted(as("hal", () -> releases.makeBatch(ELECTION, numbers, "")));
            return new Sealed(primary, releases, services.the(BatchChangeService.class));
        }

        EnvelopeKey key(String scenario) {
            return primary.envelope(scenario);
        }

        Batch now() {
            return as("hal", () -> releases.batch(ELECTION, 1));
        }

        int sheets() {
            return as("hal", () -> primary.office().the(RemakeService.class).sheets(ELECTION, 1))
                    .size();
        }

        ActResult<EnvelopeCase> reopen(EnvelopeKey key) {
            return as(
                    "eve",
                    () -> primary.office()
                            .the(DecidedCaseService.class)
                            .reopen(key, primary.now(key).version(), "A paper was found."));
        }

        ActResult<Batch> takeOut(EnvelopeKey key, String because) {
            return as("hal", () -> changes.takeOut(ELECTION, 1, now().version(), key.envelopeNo(), because));
        }

        ActResult<Batch> begin() {
            return as("hal", () -> releases.beginOpening(ELECTION, 1, now().version()));
        }

        ActResult<Batch> open() {
            return as("ida", () -> releases.recordOpening(ELECTION, 1, now().version(), 0));
        }

        List<EnvelopeNumber> waiting() {
            return as("hal", () -> releases.waiting(ELECTION)).stream()
                    .map(envelope -> envelope.key().envelopeNo())
                    .toList();
        }

        void hold(CourtOrder.Kind kind, Set<EnvelopeNumber> envelopeNos) {
            accepted(as(
                    "carl",
                    () -> primary.office()
                            .the(CourtOrderRecordService.class)
                            .record(new RecordCourtOrder(
                                    ELECTION,
                                    kind,
                                    "Circuit Court of Tamarack County",
                                    LocalDate.of(2026, 8, 5),
                                    "Until it has heard the parties.",
                                    CourtOrder.Status.IN_FORCE,
                                    null,
                                    envelopeNos))));
        }

        void replaysWhole() {
            assertThat(primary.office()
                            .the(ReleaseReplay.class)
                            .replay(ELECTION)
                            .first())
                    .isEmpty();
        }
    }

    @OnBothDatabases
    void a_case_reopened_leaves_its_sealed_batch_and_the_others_are_opened(TestOffice services) {
        Sealed sealed = Sealed.in(services);
        assertThat(sealed.sheets()).isOne();
        assertThat(accepted(sealed.reopen(sealed.key("wrong_style"))).state()).isEqualTo(CaseState.OPEN);
        assertThat(sealed.now().envelopes()).isEqualTo(2);
        assertThat(sealed.sheets()).as("nothing is to be remade any more").isZero();
        sealed.replaysWhole();
        accepted(sealed.begin());
        assertThat(accepted(sealed.open()).ballots()).isEqualTo(2);
        assertThat(sealed.primary().now(sealed.key("wrong_style")).state()).isEqualTo(CaseState.OPEN);
        sealed.replaysWhole();
    }

    @OnBothDatabases
    void a_case_of_a_batch_being_opened_is_reopened_once_its_envelope_was_taken_out(TestOffice services) {
        Sealed sealed = Sealed.in(services);
        accepted(sealed.begin());
        ActResult<EnvelopeCase> refused = sealed.reopen(sealed.key("inactive"));
        assertThat(why(refused)).isEqualTo(Why.NOT_IN_THIS_STATE);
        assertThat(refused.refusals().get(0).words()).contains("Batch 1 is being opened");
        accepted(sealed.takeOut(sealed.key("inactive"), "Its case is reopened."));
        assertThat(accepted(sealed.reopen(sealed.key("inactive"))).state()).isEqualTo(CaseState.OPEN);
        assertThat(accepted(sealed.open()).ballots()).isEqualTo(2);
        sealed.replaysWhole();
    }

    @OnBothDatabases
    void an_envelope_that_a_court_holds_later_stops_at_each_step_and_not_the_others(TestOffice services) {
        Sealed sealed = Sealed.in(services);
        sealed.hold(CourtOrder.Kind.HOLD, Set.of(sealed.key("inactive").envelopeNo()));
        ActResult<Batch> stopped = sealed.begin();
        assertThat(why(stopped)).isEqualTo(Why.HELD_BY_COURT);
        assertThat(stopped.refusals().get(0).about())
                .isEqualTo(sealed.key("inactive").envelopeNo());
        assertThat(as("hal", () -> sealed.changes().stopped(ELECTION, 1)))
                .extracting(Refusal::about)
                .containsExactly(sealed.key("inactive").envelopeNo());
        accepted(sealed.takeOut(sealed.key("inactive"), "Held by the court."));
        assertThat(sealed.waiting()).as("it does not wait to be opened either").isEmpty();
        assertThat(as("hal", () -> sealed.releases().keptClosed(ELECTION)))
                .singleElement()
                .satisfies(closed -> {
                    assertThat(closed.key()).isEqualTo(sealed.key("inactive"));
                    assertThat(closed.because()).contains(" ordered it");
                });
        accepted(sealed.begin());
        sealed.hold(CourtOrder.Kind.PRESERVE, Set.of(sealed.key("in_order").envelopeNo()));
        assertThat(why(sealed.open()))
                .as("it came while the batch was being opened")
                .isEqualTo(Why.HELD_BY_COURT);
        accepted(sealed.takeOut(sealed.key("in_order"), "To be preserved."));
        assertThat(accepted(sealed.open()).ballots()).isOne();
        sealed.replaysWhole();
    }

    @OnBothDatabases
    void a_hold_that_names_no_envelope_holds_every_one(TestOffice services) {
        Sealed sealed = Sealed.in(services);
        sealed.hold(CourtOrder.Kind.HOLD, Set.of());
        assertThat(sealed.begin().refusals())
                .extracting(Refusal::about)
                .containsExactlyInAnyOrder(
                        sealed.key(THREE[0]).envelopeNo(),
                        sealed.key(THREE[1]).envelopeNo(),
                        sealed.key(THREE[2]).envelopeNo());
    }

    @OnBothDatabases
    void two_dissolve_a_batch_with_a_reason_and_its_envelopes_wait_again(TestOffice services) {
        Sealed sealed = Sealed.in(services);
        BatchChangeService changes = sealed.changes();
        assertThat(why(as("hal", () -> changes.dissolve(ELECTION, 1, 0)))).isEqualTo(Why.NOT_IN_THIS_STATE);
        ActResult<Batch> noReason = as("hal", () -> changes.askToDissolve(ELECTION, 1, 0, " "));
        assertThat(field(noReason)).isEqualTo("because");
        Batch asked = accepted(as("hal", () -> changes.askToDissolve(ELECTION, 1, 0, "The seal is broken.")));
        assertThat(why(as("ida", () -> changes.askToDissolve(ELECTION, 1, asked.version(), "Too."))))
                .isEqualTo(Why.NOTHING_NEW);
        assertThat(why(sealed.begin())).as("not while somebody asks").isEqualTo(Why.NOT_IN_THIS_STATE);
        assertThatThrownBy(() -> as("hal", () -> changes.dissolve(ELECTION, 1, asked.version())))
                .isInstanceOf(NotPermittedException.class);
        Batch kept = accepted(as("ida", () -> changes.keep(ELECTION, 1, asked.version())));
        sealed.replaysWhole();
        Batch again = accepted(as("ida", () -> changes.askToDissolve(ELECTION, 1, kept.version(), "The seal broke.")));
        Batch dissolved = accepted(as("hal", () -> changes.dissolve(ELECTION, 1, again.version())));
        assertThat(dissolved.envelopes()).isZero();
        assertThat(why(sealed.begin())).isEqualTo(Why.NOT_IN_THIS_STATE);
        sealed.replaysWhole();
        assertThat(sealed.waiting()).hasSize(3);
        Batch next = accepted(as("hal", () -> sealed.releases().makeBatch(ELECTION, Set.copyOf(sealed.waiting()), "")));
        assertThat(next.number()).isEqualTo(2);
    }

    @OnBothDatabases
    void the_last_envelope_left_in_a_batch_is_not_opened_alone(TestOffice services) {
        Sealed sealed = Sealed.in(services);
        accepted(sealed.takeOut(sealed.key("in_order"), "Wrong tray."));
        accepted(sealed.takeOut(sealed.key("inactive"), "Wrong tray."));
        assertThat(why(sealed.begin())).isEqualTo(Why.SECRECY);
        assertThat(sealed.waiting()).hasSize(2);
    }

    @OnBothDatabases
    void nothing_leaves_an_open_batch_and_nothing_leaves_without_a_reason(TestOffice services) {
        Sealed sealed = Sealed.in(services);
        ActResult<Batch> noReason = sealed.takeOut(sealed.key("in_order"), "");
        assertThat(why(noReason)).isEqualTo(Why.NO_REASON);
        ActResult<Batch> unknown =
                as("hal", () -> sealed.changes().takeOut(ELECTION, 1, 0, new EnvelopeNumber("P-9999"), "Wrong tray."));
        assertThat(field(unknown)).isEqualTo("envelopeNo");
        accepted(sealed.begin());
        accepted(sealed.open());
        assertThat(why(sealed.takeOut(sealed.key("in_order"), "Wrong tray."))).isEqualTo(Why.NOT_IN_THIS_STATE);
        assertThat(why(as(
                        "hal",
                        () -> sealed.changes()
                                .askToDissolve(ELECTION, 1, sealed.now().version(), "Wrong tray."))))
                .isEqualTo(Why.NOT_IN_THIS_STATE);
    }

    @OnBothDatabases
    void a_court_that_orders_a_decided_envelope_rejected_takes_it_out_of_its_sealed_batch(TestOffice services) {
        Sealed sealed = Sealed.in(services);
        EnvelopeKey key = sealed.key("inactive");
        accepted(sealed.begin());
        sealed.hold(CourtOrder.Kind.REJECT, Set.of(key.envelopeNo()));
        assertThat(why(sealed.open())).as("it stays closed at once").isEqualTo(Why.CONTRADICTED);
        CourtOrderSettlementService ordered = services.the(CourtOrderSettlementService.class);
        int order = as("dora", () -> services.the(CourtOrderRecordService.class).all(ELECTION))
                .size();
        assertThat(as(
                                "dora",
                                () -> ordered.settle(
                                        key, sealed.primary().now(key).version(), order))
                        .refusals())
                .as("its batch is being opened")
                .extracting(Refusal::why)
                .containsExactly(Why.NOT_IN_THIS_STATE);
        accepted(sealed.takeOut(key, "A court ordered it rejected."));
        accepted(as("dora", () -> ordered.settle(key, sealed.primary().now(key).version(), order)));
        assertThat(services.the(DecisionService.class).standing(key)).hasValueSatisfying(decision -> {
            assertThat(decision.as()).isEqualTo(DecisionOutcome.REJECT);
            assertThat(decision.decider()).isEqualTo("court");
            assertThat(decision.number()).isEqualTo(2);
        });
        assertThat(accepted(sealed.open()).ballots()).isEqualTo(2);
        sealed.replaysWhole();
        assertThat(services.the(CaseReplay.class).replay(ELECTION).first()).isEmpty();
    }
}
