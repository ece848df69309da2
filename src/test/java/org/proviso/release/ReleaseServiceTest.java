package org.proviso.release;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.proviso.journey.Office.as;

import java.util.Set;
import org.proviso.access.NotPermittedException;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
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

    private static Why why(ReleaseActResult release) {
        return ((ReleaseActResult.Refused) release).refusal().why();
    }

    private static Batch batch(ReleaseActResult release) {
        return ((ReleaseActResult.Done) release).batch();
    }

    @OnBothDatabases
    void nothing_is_opened_before_the_other_ballots_are_done(TestOffice services) {
        Primary primary = decided(services, "in_order", "inactive");
        ReleaseService releases = services.the(ReleaseService.class);
        Set<EnvelopeNumber> both = numbers(primary, "in_order", "inactive");
        ReleaseActResult early = as("hal", () -> releases.makeBatch(new ElectionId(Primary.ID), both, ""));
        assertThat(why(early)).isEqualTo(Why.GATE_NOT_OPEN);
        assertThat(((ReleaseActResult.Refused) early).refusal().reference()).isNotNull();
        assertThatThrownBy(() -> as("hal", () -> {
                    releases.recordOtherBallotsComplete(new ElectionId(Primary.ID));
                    return true;
                }))
                .isInstanceOf(NotPermittedException.class);
        assertThat(as("hal", () -> releases.gate(new ElectionId(Primary.ID)))).isPresent();
        assertThat(as("hal", () -> releases.areOtherBallotsComplete(new ElectionId(Primary.ID))))
                .isFalse();
        othersDone(releases);
        assertThat(as("hal", () -> releases.gate(new ElectionId(Primary.ID)))).isEmpty();
        assertThat(as("hal", () -> releases.areOtherBallotsComplete(new ElectionId(Primary.ID))))
                .isTrue();
        assertThat(batch(as("hal", () -> releases.makeBatch(new ElectionId(Primary.ID), both, "")))
                        .envelopes())
                .isEqualTo(2);
        assertThat(releases.waiting(new ElectionId(Primary.ID))).isEmpty();
    }

    private static void othersDone(ReleaseService releases) {
        as("carl", () -> {
            releases.recordOtherBallotsComplete(new ElectionId(Primary.ID));
            return true;
        });
    }

    @OnBothDatabases
    void one_envelope_alone_needs_a_reason_and_undecided_ones_are_never_opened(TestOffice services) {
        Primary primary = decided(services, "in_order", "registered_late");
        ReleaseService releases = services.the(ReleaseService.class);
        othersDone(releases);
        Set<EnvelopeNumber> one = numbers(primary, "in_order");
        assertThat(why(as("hal", () -> releases.makeBatch(new ElectionId(Primary.ID), one, ""))))
                .isEqualTo(Why.SECRECY);
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
        assertThat(as(
                        "hal",
                        () -> releases.makeBatch(new ElectionId(Primary.ID), one, "The only one of this election.")))
                .isInstanceOf(ReleaseActResult.Done.class);
    }

    @OnBothDatabases
    void two_open_remake_and_hand_off_and_no_ballot_has_an_envelope(TestOffice services) {
        Primary primary = decided(services, "in_order", "inactive", "wrong_style");
        ReleaseService releases = services.the(ReleaseService.class);
        RemakeService remakes = services.the(RemakeService.class);
        othersDone(releases);
        Set<EnvelopeNumber> three = numbers(primary, "in_order", "inactive", "wrong_style");
        Batch made = batch(as("hal", () -> releases.makeBatch(new ElectionId(Primary.ID), three, "")));
        Batch begun = batch(as("hal", () -> releases.beginOpening(new ElectionId(Primary.ID), 1, made.version())));
        assertThatThrownBy(() ->
                        as("hal", () -> releases.recordOpening(new ElectionId(Primary.ID), 1, begun.version(), 0)))
                .isInstanceOf(NotPermittedException.class);
        Batch opened =
                batch(as("ida", () -> releases.recordOpening(new ElectionId(Primary.ID), 1, begun.version(), 1)));
        EnvelopeKey key = primary.envelope("in_order");
        assertThat(primary.now(key).state()).isEqualTo(CaseState.RELEASED);
        RemakeSheet sheet = remakes.sheets(new ElectionId(Primary.ID), 1).get(0);
        assertThat(sheet.ballots()).isOne();
        assertThat(sheet.styleCast()).isNotEqualTo(sheet.styleRight());
        assertThat(sheet.contests()).isNotEmpty();
        assertThat(why(as("ida", () -> remakes.handOff(new ElectionId(Primary.ID), 1, opened.version(), 2))))
                .as("not remade yet")
                .isEqualTo(Why.NOT_IN_THIS_STATE);
        as("hal", () -> {
            remakes.beginRemake(new ElectionId(Primary.ID), 1, 1, sheet.version());
            return true;
        });
        as("ida", () -> {
            remakes.recordRemake(new ElectionId(Primary.ID), 1, 1, sheet.version() + 1);
            return true;
        });
        assertThat(why(as("ida", () -> remakes.handOff(new ElectionId(Primary.ID), 1, opened.version(), 3))))
                .as("one was empty")
                .isEqualTo(Why.NOT_IN_THIS_STATE);
        assertThat(batch(as("ida", () -> remakes.handOff(new ElectionId(Primary.ID), 1, opened.version(), 2)))
                        .handedOffAt())
                .isNotNull();
        assertThat(services.the(LedgerService.class).read(LedgerChain.of(new ElectionId(Primary.ID)), 0, 99))
                .filteredOn(entry -> entry.subject().startsWith("batch"))
                .hasSize(6)
                .allSatisfy(entry ->
                        assertThat(three).noneMatch(number -> entry.line().contains(number.value())));
    }
}
