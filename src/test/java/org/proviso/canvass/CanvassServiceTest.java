package org.proviso.canvass;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.proviso.core.act.ActResults.accepted;
import static org.proviso.core.act.ActResults.field;
import static org.proviso.core.act.ActResults.why;
import static org.proviso.core.act.ActResults.whys;
import static org.proviso.journey.Office.as;

import java.time.LocalDateTime;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.proviso.access.NotPermittedException;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.chain.ChainHead;
import org.proviso.core.chain.LedgerEntry;
import org.proviso.core.rules.Ask;
import org.proviso.database.OfficeTime;
import org.proviso.database.OnADatabase;
import org.proviso.database.TestOffice;
import org.proviso.election.ElectionService;
import org.proviso.intake.LoadedOffice;
import org.proviso.intake.RecordCure;
import org.proviso.intake.cure.CureService;
import org.proviso.journey.Deciding;
import org.proviso.journey.Primary;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;
import org.proviso.notices.Notice;
import org.proviso.notices.NoticeService;
import org.proviso.review.decide.DecisionService;

/** Figures that a supervisor notes and keeps, and the closing of an election. */
class CanvassServiceTest {

    private static final ElectionId PRIMARY = new ElectionId(Primary.ID);

    private static NoteFigure tabulated(Figure figure) {
        return new NoteFigure(PRIMARY, CanvassService.COUNTY, VotingHours.REGULAR, figure, 7, "Tabulator's report.");
    }

    private static long entries(TestOffice office) {
        return office.the(LedgerService.class).head(LedgerChain.of(PRIMARY)).sequence();
    }

    @OnADatabase
    void a_figure_that_only_a_person_can_tell_is_noted_and_a_counted_one_is_not(TestOffice office) {
        Primary.loaded(office);
        CanvassService canvass = office.the(CanvassService.class);
        NoteFigure noted = accepted(as("carl", () -> canvass.noteFigure(tabulated(Figure.TABULATED))));
        assertThat(noted.number()).isEqualTo(7);
        LedgerEntry entry = LoadedOffice.lastEntry(office);
        assertThat(entry.act()).isEqualTo("figure_noted");
        assertThat(entry.subject()).isEqualTo("The county");
        assertThat(entry.payload())
                .containsOnly(Map.entry("figure", "tabulated"), Map.entry("hours", "regular"), Map.entry("number", 7L));
        ActResult<NoteFigure> counted = as("carl", () -> canvass.noteFigure(tabulated(Figure.COUNTED)));
        assertThat(why(counted)).isEqualTo(Why.COUNTED_NOT_NOTED);
        assertThat(field(counted)).isEqualTo("figure");
        assertThat(LoadedOffice.lastEntry(office)).isEqualTo(entry);
    }

    @OnADatabase
    void an_election_out_of_balance_is_not_closed_and_every_rule_that_does_not_hold_is_named(TestOffice office) {
        Primary.loaded(office);
        CanvassService canvass = office.the(CanvassService.class);
        long before = entries(office);
        ActResult<ChainHead> closing = as("carl", () -> canvass.closeElection(PRIMARY));
        List<String> wrong = as("carl", () -> canvass.balances(PRIMARY, EnumSet.allOf(BalanceRule.class))).stream()
                .filter(balance -> !(balance instanceof BalanceResult.Holds))
                .map(BalanceResult::words)
                .toList();
        assertThat(closing.refusals())
                .extracting(Refusal::words)
                .isEqualTo(wrong)
                .isNotEmpty();
        assertThat(Set.copyOf(whys(closing))).containsExactly(Why.OUT_OF_BALANCE);
        assertThat(office.the(ElectionService.class).isClosed(PRIMARY)).isFalse();
        assertThat(entries(office)).isEqualTo(before);
    }

    private static PlaceFigures county(TestOffice office, VotingHours hours) {
        return as("carl", () -> office.the(CanvassService.class).accounts(PRIMARY)).stream()
                .filter(accounts -> accounts.hours() == hours)
                .findFirst()
                .orElseThrow()
                .county();
    }

    private static int asked(TestOffice office) {
        return county(office, VotingHours.REGULAR).number(Figure.ASK_NOTICES)
                + county(office, VotingHours.EXTENDED).number(Figure.ASK_NOTICES);
    }

    @OnADatabase
    void a_voter_who_comes_before_the_letter_went_out_leaves_no_total_out_of_balance(TestOffice office) {
        OfficeTime.set(office, LocalDateTime.of(2026, 8, 5, 12, 0));
        Primary primary = Primary.loaded(office);
        int asked = asked(office);
        EnvelopeKey key = new EnvelopeKey(PRIMARY, new EnvelopeNumber("P-1009"));
        RecordCure brought = new RecordCure(
                PRIMARY,
                key.envelopeNo(),
                Ask.IDENTIFICATION,
                primary.day().plusDays(1).atTime(11, 0),
                "Licence seen.");
        accepted(as("jon", () -> office.the(CureService.class).record(brought)));
        assertThat(as("jon", () -> office.the(NoticeService.class).notices(key)))
                .as("its letter needs not go out any more")
                .isNotEmpty()
                .allMatch(Notice::isWithdrawn);
        assertThat(asked(office)).isEqualTo(asked);
        for (VotingHours hours : VotingHours.values()) {
            PlaceFigures now = county(office, hours);
            assertThat(now.number(Figure.ASK_NOTICES)).isEqualTo(now.number(Figure.CURE_DEFECTS));
        }
    }

    @OnADatabase
    void a_voter_in_line_at_the_regular_close_counts_in_regular_hours_whatever_the_envelope_is_marked(
            TestOffice office) {
        Primary primary = Primary.loaded(office);
        primary.at(2, 12, 0);
        EnvelopeKey key = primary.envelope("in_line_at_close");
        office.jdbc()
                .sql("update envelope set extended_hours = 'yes' where election_id = ? and envelope_no = ?")
                .params(PRIMARY, key.envelopeNo())
                .update();
        new Deciding(primary).settled(key);
        assertThat(office.the(DecisionService.class)
                        .standing(key)
                        .orElseThrow()
                        .ballot()
                        .heldApart())
                .as("its ballot is opened with the others")
                .isFalse();
        assertThat(county(office, VotingHours.REGULAR).number(Figure.COUNTED)).isOne();
        assertThat(county(office, VotingHours.EXTENDED).number(Figure.COUNTED)).isZero();
    }

    @OnADatabase
    void nothing_is_noted_kept_or_closed_once_the_election_is_closed(TestOffice office) {
        Primary.loaded(office);
        CanvassService canvass = office.the(CanvassService.class);
        office.inTransaction(() -> {
            office.the(ElectionService.class).close(PRIMARY);
            return true;
        });
        long before = entries(office);
        assertThat(why(as("carl", () -> canvass.noteFigure(tabulated(Figure.TABULATED)))))
                .isEqualTo(Why.ELECTION_CLOSED);
        assertThat(why(as("carl", () -> canvass.keepDailyFigures(PRIMARY, Map.of()))))
                .isEqualTo(Why.ELECTION_CLOSED);
        assertThat(why(as("carl", () -> canvass.closeElection(PRIMARY)))).isEqualTo(Why.ELECTION_CLOSED);
        assertThat(as("carl", () -> canvass.missing(PRIMARY)).missing())
                .as("nothing is missing any more")
                .isEmpty();
        assertThat(entries(office)).isEqualTo(before);
    }

    @OnADatabase
    void only_a_supervisor_notes_keeps_and_closes(TestOffice office) {
        Primary.loaded(office);
        CanvassService canvass = office.the(CanvassService.class);
        assertThatThrownBy(() -> as("ada", () -> canvass.noteFigure(tabulated(Figure.COUNTED))))
                .isInstanceOf(NotPermittedException.class);
        assertThatThrownBy(() -> as("ada", () -> canvass.keepDailyFigures(PRIMARY, Map.of())))
                .isInstanceOf(NotPermittedException.class);
        assertThatThrownBy(() -> as("ada", () -> canvass.closeElection(PRIMARY)))
                .isInstanceOf(NotPermittedException.class);
    }

    @Test
    void the_county_is_told_from_a_voting_location_by_what_it_is_not_by_its_name() {
        CanvassPlace hall = CanvassPlace.location("The county in extended hours", VotingHours.REGULAR);
        CanvassPlace county = CanvassPlace.county(VotingHours.EXTENDED);
        assertThat(hall.words()).isEqualTo(county.words());
        assertThat(hall.isCounty()).isFalse();
        assertThat(hall.hours()).isEqualTo(VotingHours.REGULAR);
        assertThat(county.isCounty()).isTrue();
        assertThat(county.name()).isEqualTo(CanvassService.COUNTY);
    }
}
