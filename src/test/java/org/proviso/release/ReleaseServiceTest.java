package org.proviso.release;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.proviso.core.act.ActResults.accepted;
import static org.proviso.core.act.ActResults.field;
import static org.proviso.core.act.ActResults.why;
import static org.proviso.journey.Office.as;

import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import org.proviso.access.NotPermittedException;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal.Why;
import org.proviso.database.OnBothDatabases;
import org.proviso.database.TestOffice;
import org.proviso.journey.Deciding;
import org.proviso.journey.Primary;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;
import org.proviso.review.CaseState;

/** Opening what counts: when, by whom, with what, and what is known of it afterwards. */
class ReleaseServiceTest {

    /** Decided: two that count in full, one in part, one of court-extended hours. */
    private static Primary decided(TestOffice services, String... scenarios) {
        Primary primary = Primary.loaded(services);
        primary.at(3, 10, 0);
        Deciding deciding = new Deciding(primary);
        for (String scenario : scenarios) {
            deciding.settled(primary.envelope(scenario));
        }
        return primary;
    }

    private static Set<EnvelopeNumber> numbers(Primary primary, String... scenarios) {
        Set<EnvelopeNumber> numbers = new java.util.LinkedHashSet<>();
        for (String scenario : scenarios) {
            numbers.add(primary.envelope(scenario).envelopeNo());
        }
        return numbers;
    }

    @OnBothDatabases
    void nothing_is_opened_before_the_other_ballots_are_done(TestOffice services) {
        Primary primary = decided(services, "in_order", "inactive");
        ReleaseService releases = services.the(ReleaseService.class);
        Set<EnvelopeNumber> both = numbers(primary, "in_order", "inactive");
        ActResult<Batch> early = as("hal", () -> releases.makeBatch(new ElectionId(Primary.ID), both, ""));
        assertThat(why(early)).isEqualTo(Why.GATE_NOT_OPEN);
        assertThat(early.refusals().get(0).reference()).isNotNull();
        assertThatThrownBy(() -> as("hal", () -> releases.recordOtherBallotsComplete(new ElectionId(Primary.ID))))
                .isInstanceOf(NotPermittedException.class);
        assertThat(as("hal", () -> releases.gate(new ElectionId(Primary.ID)))).isPresent();
        assertThat(as("hal", () -> releases.areOtherBallotsComplete(new ElectionId(Primary.ID))))
                .isFalse();
        othersDone(releases);
        assertThat(as("hal", () -> releases.gate(new ElectionId(Primary.ID)))).isEmpty();
        assertThat(as("hal", () -> releases.areOtherBallotsComplete(new ElectionId(Primary.ID))))
                .isTrue();
        assertThat(accepted(as("hal", () -> releases.makeBatch(new ElectionId(Primary.ID), both, "")))
                        .envelopes())
                .isEqualTo(2);
        assertThat(as("hal", () -> releases.waiting(new ElectionId(Primary.ID))))
                .isEmpty();
    }

    private static void othersDone(ReleaseService releases) {
        accepted(as("carl", () -> releases.recordOtherBallotsComplete(new ElectionId(Primary.ID))));
    }

    @OnBothDatabases
    void the_word_given_too_early_is_taken_back_until_a_batch_is_begun_to_open(TestOffice services) {
        Primary primary = decided(services, "in_order", "inactive");
        ElectionId id = new ElectionId(Primary.ID);
        ReleaseService releases = services.the(ReleaseService.class);
        assertThat(why(as("carl", () -> releases.takeBackOtherBallotsComplete(id, "Too early."))))
                .isEqualTo(Why.NOTHING_NEW);
        othersDone(releases);
        Batch batch = accepted(as("hal", () -> releases.makeBatch(id, numbers(primary, "in_order", "inactive"), "")));
        assertThat(why(as("carl", () -> releases.takeBackOtherBallotsComplete(id, " "))))
                .isEqualTo(Why.NO_REASON);
        accepted(as("carl", () -> releases.takeBackOtherBallotsComplete(id, "A tray of mail ballots was found.")));
        assertThat(as("hal", () -> releases.areOtherBallotsComplete(id))).isFalse();
        assertThat(why(as("hal", () -> releases.beginOpening(id, batch.number(), batch.version()))))
                .isEqualTo(Why.GATE_NOT_OPEN);
        othersDone(releases);
        accepted(as("hal", () -> releases.beginOpening(id, batch.number(), batch.version())));
        ActResult<ElectionId> late =
                as("carl", () -> releases.takeBackOtherBallotsComplete(id, "Another tray was found."));
        assertThat(why(late)).isEqualTo(Why.NOT_IN_THIS_STATE);
        assertThat(as("hal", () -> releases.areOtherBallotsComplete(id))).isTrue();
        assertThat(services.the(ReleaseReplay.class).replay(id).first()).isEmpty();
        services.jdbc()
                .sql("update others_done_taken_back set because = 'another'")
                .update();
        assertThat(services.the(ReleaseReplay.class).replay(id).first())
                .singleElement()
                .asString()
                .contains("taken back 1");
    }

    @OnBothDatabases
    void one_envelope_alone_needs_a_reason_and_undecided_ones_are_never_opened(TestOffice services) {
        Primary primary = decided(services, "in_order", "registered_late");
        ReleaseService releases = services.the(ReleaseService.class);
        othersDone(releases);
        Set<EnvelopeNumber> inOrder = numbers(primary, "in_order");
        ActResult<Batch> alone = as("hal", () -> releases.makeBatch(new ElectionId(Primary.ID), inOrder, ""));
        assertThat(why(alone)).isEqualTo(Why.SECRECY);
        assertThat(field(alone)).isEqualTo("aloneBecause");
        assertThat(why(as(
                        "hal",
                        () -> releases.makeBatch(
                                new ElectionId(Primary.ID), numbers(primary, "in_order", "inactive"), ""))))
                .as("one of them is not decided")
                .isEqualTo(Why.NOT_IN_THIS_STATE);
        assertThat(why(as(
                        "hal",
                        () -> releases.makeBatch(
                                new ElectionId(Primary.ID), numbers(primary, "registered_late"), "x"))))
                .as("rejected")
                .isEqualTo(Why.NOT_IN_THIS_STATE);
        accepted(as(
                "hal",
                () -> releases.makeBatch(new ElectionId(Primary.ID), inOrder, "The only one of this election.")));
    }

    @OnBothDatabases
    void two_open_remake_and_hand_off_and_no_ballot_has_an_envelope(TestOffice services) {
        Primary primary = decided(services, "in_order", "inactive", "wrong_style");
        ReleaseService releases = services.the(ReleaseService.class);
        RemakeService remakes = services.the(RemakeService.class);
        othersDone(releases);
        Set<EnvelopeNumber> three = numbers(primary, "in_order", "inactive", "wrong_style");
        Batch made = accepted(as("hal", () -> releases.makeBatch(new ElectionId(Primary.ID), three, "")));
        Batch begun = accepted(as("hal", () -> releases.beginOpening(new ElectionId(Primary.ID), 1, made.version())));
        assertThatThrownBy(() ->
                        as("hal", () -> releases.recordOpening(new ElectionId(Primary.ID), 1, begun.version(), 0)))
                .isInstanceOf(NotPermittedException.class);
        Batch opened =
                accepted(as("ida", () -> releases.recordOpening(new ElectionId(Primary.ID), 1, begun.version(), 1)));
        EnvelopeKey key = primary.envelope("in_order");
        assertThat(primary.now(key).state()).isEqualTo(CaseState.RELEASED);
        RemakeSheet sheet =
                as("hal", () -> remakes.sheets(new ElectionId(Primary.ID), 1)).get(0);
        assertThat(sheet.ballots()).isOne();
        assertThat(sheet.styleCast()).isNotEqualTo(sheet.styleRight());
        assertThat(sheet.contests()).isNotEmpty();
        assertThat(why(as("ida", () -> remakes.handOff(new ElectionId(Primary.ID), 1, opened.version(), 2))))
                .as("not remade yet")
                .isEqualTo(Why.NOT_IN_THIS_STATE);
        accepted(as("hal", () -> remakes.beginRemake(new ElectionId(Primary.ID), 1, 1, sheet.version())));
        accepted(as("ida", () -> remakes.recordRemake(new ElectionId(Primary.ID), 1, 1, sheet.version() + 1)));
        ActResult<Batch> miscounted =
                as("ida", () -> remakes.handOff(new ElectionId(Primary.ID), 1, opened.version(), 3));
        assertThat(why(miscounted)).as("one was empty").isEqualTo(Why.OUT_OF_BALANCE);
        assertThat(field(miscounted)).isEqualTo("ballots");
        assertThat(accepted(as("ida", () -> remakes.handOff(new ElectionId(Primary.ID), 1, opened.version(), 2)))
                        .handedOffAt())
                .isNotNull();
        assertThat(services.the(LedgerService.class).read(LedgerChain.of(new ElectionId(Primary.ID)), 0, 99))
                .filteredOn(entry -> entry.subject().startsWith("batch"))
                .hasSize(6)
                .allSatisfy(entry ->
                        assertThat(three).noneMatch(number -> entry.line().contains(number.value())));
    }

    @OnBothDatabases
    void what_is_done_once_is_refused_before_its_turn_and_after_it(TestOffice services) {
        ElectionId primary = new ElectionId(Primary.ID);
        Set<EnvelopeNumber> two = numbers(decided(services, "in_order", "wrong_style"), "in_order", "wrong_style");
        ReleaseService releases = services.the(ReleaseService.class);
        RemakeService remakes = services.the(RemakeService.class);
        othersDone(releases);
        assertThat(why(as("carl", () -> releases.recordOtherBallotsComplete(primary))))
                .isEqualTo(Why.NOTHING_NEW);
        Batch made = accepted(as("hal", () -> releases.makeBatch(primary, two, "")));
        RemakeSheet sheet = as("hal", () -> remakes.sheets(primary, 1)).get(0);
        notInThisState(as("ida", () -> releases.recordOpening(primary, 1, made.version(), 0)));
        notInThisState(as("ida", () -> remakes.beginRemake(primary, 1, 1, sheet.version())));
        notInThisState(as("ida", () -> remakes.handOff(primary, 1, made.version(), 2)));
        Batch begun = accepted(as("hal", () -> releases.beginOpening(primary, 1, made.version())));
        notInThisState(as("ida", () -> releases.beginOpening(primary, 1, begun.version())));
        ActResult<Batch> impossible = as("ida", () -> releases.recordOpening(primary, 1, begun.version(), 3));
        assertThat(why(impossible)).as("three empty ones of two").isEqualTo(Why.MISTYPED);
        assertThat(field(impossible)).isEqualTo("empty");
        Batch opened = accepted(as("ida", () -> releases.recordOpening(primary, 1, begun.version(), 0)));
        notInThisState(as("ida", () -> releases.recordOpening(primary, 1, opened.version(), 0)));
        notInThisState(as("ida", () -> remakes.recordRemake(primary, 1, 1, sheet.version())));
        RemakeSheet copying = accepted(as("hal", () -> remakes.beginRemake(primary, 1, 1, sheet.version())));
        notInThisState(as("ida", () -> remakes.beginRemake(primary, 1, 1, copying.version())));
        assertThatThrownBy(() -> as("hal", () -> remakes.recordRemake(primary, 1, 1, copying.version())))
                .isInstanceOf(NotPermittedException.class);
        RemakeSheet remade = accepted(as("ida", () -> remakes.recordRemake(primary, 1, 1, copying.version())));
        notInThisState(as("ida", () -> remakes.recordRemake(primary, 1, 1, remade.version())));
        Batch handed = accepted(as("ida", () -> remakes.handOff(primary, 1, opened.version(), 2)));
        notInThisState(as("ida", () -> remakes.handOff(primary, 1, handed.version(), 2)));
        assertThat(as("carl", () -> releases.names(primary, 1)).keySet())
                .containsExactlyInAnyOrder(new UserName("hal"), new UserName("ida"));
    }

    private static void notInThisState(ActResult<?> result) {
        assertThat(why(result)).isEqualTo(Why.NOT_IN_THIS_STATE);
    }

    @OnBothDatabases
    void a_batch_with_a_case_that_is_decided_no_more_is_not_opened_at_all(TestOffice services) {
        ElectionId primary = new ElectionId(Primary.ID);
        Primary sample = decided(services, "in_order", "inactive");
        ReleaseService releases = services.the(ReleaseService.class);
        othersDone(releases);
        Set<EnvelopeNumber> both = numbers(sample, "in_order", "inactive");
        Batch made = accepted(as("hal", () -> releases.makeBatch(primary, both, "")));
        Batch begun = accepted(as("hal", () -> releases.beginOpening(primary, 1, made.version())));
        EnvelopeKey reopened = sample.envelope("inactive");
        services.jdbc()
                .sql("update envelope_case set state = 'open' where envelope_no = ?")
                .param(reopened.envelopeNo())
                .update();
        ActResult<Batch> refused = as("ida", () -> releases.recordOpening(primary, 1, begun.version(), 0));
        notInThisState(refused);
        assertThat(refused.refusals().get(0).about()).isEqualTo(reopened.envelopeNo());
        assertThat(as("ida", () -> releases.batch(primary, 1)))
                .as("nothing was written")
                .isEqualTo(begun);
        assertThat(sample.now(sample.envelope("in_order")).state()).isEqualTo(CaseState.DECIDED);
    }

    @OnBothDatabases
    void whoever_may_not_see_the_release_does_not_learn_whether_a_batch_is_there(TestOffice services) {
        ElectionId primary = new ElectionId(Primary.ID);
        decided(services);
        ReleaseService releases = services.the(ReleaseService.class);
        RemakeService remakes = services.the(RemakeService.class);
        List<Supplier<Object>> asked = List.of(
                () -> releases.recordOpening(primary, 77, 0, 0),
                () -> releases.beginOpening(primary, 77, 0),
                () -> releases.batch(primary, 77),
                () -> releases.names(primary, 77),
                () -> releases.waiting(primary),
                () -> releases.batches(primary),
                () -> releases.gate(primary),
                () -> remakes.sheets(primary, 77),
                () -> remakes.beginRemake(primary, 77, 1, 0),
                () -> remakes.recordRemake(primary, 77, 1, 0),
                () -> remakes.handOff(primary, 77, 0, 0));
        asked.forEach(what -> assertThatThrownBy(() -> as("jon", what)).isInstanceOf(NotPermittedException.class));
        assertThatThrownBy(() -> as("hal", () -> releases.recordOpening(primary, 77, 0, 0)))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
