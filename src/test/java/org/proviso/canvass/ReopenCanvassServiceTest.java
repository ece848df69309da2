package org.proviso.canvass;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static org.proviso.core.act.ActResults.accepted;
import static org.proviso.core.act.ActResults.field;
import static org.proviso.core.act.ActResults.why;
import static org.proviso.journey.Office.as;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.proviso.access.NotPermittedException;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.UserName;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.database.OnBothDatabases;
import org.proviso.database.TestOffice;
import org.proviso.election.ElectionService;
import org.proviso.journey.Deciding;
import org.proviso.journey.Primary;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;

/** A certified canvass is reopened by two people with a reason, and what changed is said when it is closed again. */
class ReopenCanvassServiceTest {

    private static final ElectionId PRIMARY = new ElectionId(Primary.ID);

    /** Closed as a closing leaves it, whatever does not add up in the small sample. */
    private static void close(TestOffice office) {
        office.inTransaction(() -> {
            office.the(ElectionService.class).close(PRIMARY);
            Map<Figure, Integer> total = new EnumMap<>(Figure.class);
            for (Figure figure : List.of(Figure.RECEIVED, Figure.COUNTED, Figure.COUNTED_IN_PART, Figure.REJECTED)) {
                total.put(figure, 1);
            }
            office.the(ClosingStore.class).insert(PRIMARY, new UserName("carl"), new PlaceFigures(total));
            return true;
        });
    }

    private static List<CanvassClosing> closings(TestOffice office) {
        return as("carl", () -> office.the(ReopenCanvassService.class).closings(PRIMARY));
    }

    @OnBothDatabases
    void two_people_reopen_a_closed_canvass_with_a_reason_and_the_next_closing_says_what_changed(TestOffice office) {
        Primary primary = Primary.loaded(office);
        primary.at(3, 10, 0);
        EnvelopeKey key = primary.envelope("in_order");
        EnvelopeKey late = primary.envelope("inactive");
        new Deciding(primary).settled(key);
        ReopenCanvassService reopening = office.the(ReopenCanvassService.class);
        assertThat(why(as("carl", () -> reopening.askToReopen(PRIMARY, "A court asked."))))
                .as("it is not closed")
                .isEqualTo(Why.NOT_IN_THIS_STATE);
        close(office);
        assertThat(why(as("dora", () -> reopening.reopen(PRIMARY))))
                .as("nobody asked")
                .isEqualTo(Why.NOT_IN_THIS_STATE);
        ActResult<CanvassClosing> silent = as("carl", () -> reopening.askToReopen(PRIMARY, " "));
        assertThat(why(silent)).isEqualTo(Why.NO_REASON);
        assertThat(field(silent)).isEqualTo("because");
        accepted(as("carl", () -> reopening.askToReopen(PRIMARY, "The Circuit Court ordered it.")));
        assertThat(why(as("carl", () -> reopening.askToReopen(PRIMARY, "Again."))))
                .isEqualTo(Why.NOTHING_NEW);
        assertThatThrownBy(() -> as("carl", () -> reopening.reopen(PRIMARY)))
                .as("not by whoever asked")
                .isInstanceOf(NotPermittedException.class);
        accepted(as("carl", () -> reopening.keepClosed(PRIMARY)));
        assertThat(office.the(ElectionService.class).isClosed(PRIMARY)).isTrue();
        accepted(as("carl", () -> reopening.askToReopen(PRIMARY, "The Circuit Court ordered it.")));
        accepted(as("dora", () -> reopening.reopen(PRIMARY)));
        assertThat(office.the(ElectionService.class).isClosed(PRIMARY)).isFalse();
        primary.at(4, 10, 0);
        new Deciding(primary).reopened(key);
        new Deciding(primary).settled(late);
        close(office);
        assertThat(closings(office))
                .extracting(CanvassClosing::number, CanvassClosing::stands)
                .containsExactly(tuple(1, false), tuple(2, true));
        assertThat(as("carl", () -> reopening.amended(PRIMARY, 2)))
                .containsExactlyInAnyOrder(
                        new AmendedOutcome(key.envelopeNo(), DecisionOutcome.COUNT, null),
                        new AmendedOutcome(late.envelopeNo(), null, DecisionOutcome.COUNT));
        assertThat(as("carl", () -> reopening.amended(PRIMARY, 1))).isEmpty();
        assertThat(office.the(LedgerService.class)
                        .verify(LedgerChain.of(PRIMARY))
                        .isWhole())
                .isTrue();
    }

    @OnBothDatabases
    void the_closing_waits_for_an_act_that_goes_on(TestOffice office) throws Exception {
        Primary.loaded(office);
        ElectionService elections = office.the(ElectionService.class);
        CountDownLatch acting = new CountDownLatch(1);
        CountDownLatch goOn = new CountDownLatch(1);
        CompletableFuture<Boolean> act = CompletableFuture.supplyAsync(() -> office.inTransaction(() -> {
            boolean open = elections.closed(PRIMARY).isEmpty();
            acting.countDown();
            await(goOn);
            return open;
        }));
        assertThat(acting.await(30, TimeUnit.SECONDS)).isTrue();
        CompletableFuture<Boolean> closing = CompletableFuture.supplyAsync(() -> office.inTransaction(() -> {
            elections.holdForClosing(PRIMARY);
            elections.close(PRIMARY);
            return true;
        }));
        assertThatThrownBy(() -> closing.get(500, TimeUnit.MILLISECONDS))
                .as("the act has not ended")
                .isInstanceOf(TimeoutException.class);
        goOn.countDown();
        assertThat(act.get(30, TimeUnit.SECONDS)).isTrue();
        assertThat(closing.get(30, TimeUnit.SECONDS)).isTrue();
        assertThat(elections.isClosed(PRIMARY)).isTrue();
    }

    private static void await(CountDownLatch latch) {
        try {
            assertThat(latch.await(30, TimeUnit.SECONDS)).isTrue();
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }
}
