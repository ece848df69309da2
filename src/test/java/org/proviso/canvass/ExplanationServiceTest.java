package org.proviso.canvass;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.proviso.core.act.ActResults.accepted;
import static org.proviso.core.act.ActResults.field;
import static org.proviso.core.act.ActResults.why;
import static org.proviso.journey.Office.as;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.proviso.access.NotPermittedException;
import org.proviso.canvass.ExplanationService.Signed;
import org.proviso.core.ElectionId;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.chain.LedgerEntry;
import org.proviso.database.OnBothDatabases;
import org.proviso.database.TestOffice;
import org.proviso.intake.LoadedOffice;
import org.proviso.journey.Primary;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;
import org.springframework.dao.OptimisticLockingFailureException;

/** Two supervisors explain a total that cannot agree, and closing does not wait for it any more. */
class ExplanationServiceTest {

    private static final ElectionId PRIMARY = new ElectionId(Primary.ID);
    private static final CanvassPlace LIBRARY = CanvassPlace.location("Depot Street Library", VotingHours.REGULAR);

    private static BalanceResult now(TestOffice office, BalanceRule rule) {
        return as("carl", () -> office.the(CanvassService.class).balances(PRIMARY, List.of(rule))).stream()
                .filter(balance -> balance.where().equals(LIBRARY))
                .findFirst()
                .orElseThrow();
    }

    private static boolean isMissing(TestOffice office, BalanceRule rule) {
        return as("carl", () -> office.the(CanvassService.class).missing(PRIMARY)).open().stream()
                .anyMatch(
                        balance -> balance.identity() == rule && balance.where().equals(LIBRARY));
    }

    private static void note(TestOffice office, Figure figure, int number) {
        accepted(as(
                "carl",
                () -> office.the(CanvassService.class)
                        .noteFigure(new NoteFigure(
                                PRIMARY, LIBRARY.name(), VotingHours.REGULAR, figure, number, "Counted again."))));
    }

    private static ExplainBalance of(BalanceRule rule, @Nullable Integer difference, String because) {
        return new ExplainBalance(PRIMARY, LIBRARY, rule, difference, because);
    }

    private static int sentBack(TestOffice office, int more) {
        int received = as("carl", () -> office.the(CanvassService.class).accounts(PRIMARY)).stream()
                .filter(accounts -> accounts.hours() == VotingHours.REGULAR)
                .map(accounts -> accounts.locations().get(LIBRARY.name()))
                .mapToInt(figures -> figures.number(Figure.RECEIVED))
                .sum();
        note(office, Figure.SENT_BACK, received + more);
        return more;
    }

    @OnBothDatabases
    void two_people_sign_why_a_total_cannot_agree_and_it_holds_as_long_as_the_numbers_do(TestOffice office) {
        Primary.loaded(office);
        ExplanationService service = office.the(ExplanationService.class);
        sentBack(office, 1);
        assertThat(isMissing(office, BalanceRule.SENT_BACK_ARRIVED)).isTrue();
        assertThat(field(as("carl", () -> service.explain(of(BalanceRule.SENT_BACK_ARRIVED, 1, " ")))))
                .isEqualTo("because");
        assertThat(why(as("carl", () -> service.explain(of(BalanceRule.SENT_BACK_ARRIVED, 2, "Lost.")))))
                .as("the page was stale")
                .isEqualTo(Why.NOT_IN_THIS_STATE);
        int number = accepted(as(
                "carl",
                () -> service.explain(of(BalanceRule.SENT_BACK_ARRIVED, 1, "One envelope fell in the river."))));
        LedgerEntry entry = LoadedOffice.lastEntry(office);
        assertThat(entry.act()).isEqualTo("difference_explained");
        assertThat(entry.payload())
                .containsEntry("difference", 1L)
                .containsEntry("identity", "sent_back_arrived")
                .doesNotContainValue("One envelope fell in the river.");
        assertThat(why(as("dora", () -> service.explain(of(BalanceRule.SENT_BACK_ARRIVED, 1, "Another.")))))
                .isEqualTo(Why.NOTHING_NEW);
        assertThat(isMissing(office, BalanceRule.SENT_BACK_ARRIVED))
                .as("one signature")
                .isTrue();
        assertThatThrownBy(() -> as("carl", () -> service.sign(PRIMARY, number, 0)))
                .as("nobody signs their own explanation")
                .isInstanceOf(NotPermittedException.class);
        accepted(as("dora", () -> service.sign(PRIMARY, number, 0)));
        assertThatThrownBy(() -> as("dora", () -> service.sign(PRIMARY, number, 0)))
                .as("twice")
                .isInstanceOf(OptimisticLockingFailureException.class);
        assertThat(now(office, BalanceRule.SENT_BACK_ARRIVED)).isInstanceOf(BalanceResult.Explained.class);
        assertThat(isMissing(office, BalanceRule.SENT_BACK_ARRIVED)).isFalse();
        sentBack(office, 2);
        assertThat(isMissing(office, BalanceRule.SENT_BACK_ARRIVED))
                .as("another number")
                .isTrue();
        sentBack(office, 1);
        assertThat(isMissing(office, BalanceRule.SENT_BACK_ARRIVED)).isFalse();
        Signed line = as("carl", () -> service.standing(PRIMARY)).get(0);
        accepted(as(
                "carl",
                () -> service.takeBack(PRIMARY, number, line.explanation().version())));
        assertThat(isMissing(office, BalanceRule.SENT_BACK_ARRIVED)).isTrue();
        assertThat(office.the(LedgerService.class)
                        .verify(LedgerChain.of(PRIMARY))
                        .isWhole())
                .isTrue();
    }

    @OnBothDatabases
    void a_figure_that_nobody_can_tell_is_explained_and_votes_are_not(TestOffice office) {
        Primary.loaded(office);
        ExplanationService service = office.the(ExplanationService.class);
        assertThat(now(office, BalanceRule.STOCK)).isInstanceOf(BalanceResult.CannotBeChecked.class);
        int number = accepted(as("carl", () -> service.explain(of(BalanceRule.STOCK, null, "The form burned."))));
        accepted(as("dora", () -> service.sign(PRIMARY, number, 0)));
        assertThat(isMissing(office, BalanceRule.STOCK)).isFalse();
        Arrays.stream(BalanceRule.values())
                .filter(rule -> !rule.mayBeExplained())
                .forEach(rule -> assertThat(why(as("carl", () -> service.explain(of(rule, 1, "It is so.")))))
                        .isEqualTo(Why.OUT_OF_BALANCE));
        assertThatThrownBy(() -> as("pam", () -> service.explain(of(BalanceRule.STOCK, null, "No."))))
                .isInstanceOf(NotPermittedException.class);
    }
}
