package org.proviso.canvass.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.proviso.core.act.ActResults.accepted;
import static org.proviso.core.act.ActResults.field;
import static org.proviso.core.act.ActResults.why;
import static org.proviso.journey.Office.as;

import java.util.List;
import java.util.Map;
import org.proviso.canvass.CanvassService;
import org.proviso.canvass.Figure;
import org.proviso.canvass.NoteFigure;
import org.proviso.canvass.VotingHours;
import org.proviso.core.ElectionId;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.chain.LedgerEntry;
import org.proviso.database.OnADatabase;
import org.proviso.database.OnBothDatabases;
import org.proviso.database.TestOffice;
import org.proviso.election.ElectionService;
import org.proviso.intake.LoadedOffice;
import org.proviso.intake.RecordTransmittal;
import org.proviso.intake.TransmittalService;
import org.proviso.journey.Primary;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;

/** What a supervisor types on the sheet of balances, and what becomes of it. */
class BalanceSheetServiceTest {

    private static final ElectionId PRIMARY = new ElectionId(Primary.ID);
    private static final String HALL = "Grange Hall";

    /** A location of its own: given 40, issued 6, one spoiled, 33 unused, 6 sent back; its envelopes have not come. */
    private static BalanceSheetService atGrangeHall(TestOffice office) {
        Primary.loaded(office);
        transmittal(office, 6);
        return office.the(BalanceSheetService.class);
    }

    private static void transmittal(TestOffice office, int issued) {
        accepted(as(
                "carl",
                () -> office.the(TransmittalService.class)
                        .record(new RecordTransmittal(
                                PRIMARY, HALL, null, "B" + issued, "7", "7", 40, issued, 1, 33, issued, null, null))));
    }

    private static SheetCell cell(TestOffice office, Figure figure) {
        return as("carl", () -> office.the(BalanceSheetService.class).sheet(PRIMARY)).rows().stream()
                .filter(row -> row.where().name().equals(HALL) && row.where().hours() == VotingHours.REGULAR)
                .findFirst()
                .orElseThrow()
                .cell(figure);
    }

    /** Over what stands there now. */
    private static TypedFigure typed(TestOffice office, Figure figure, int number) {
        SheetCell seen = cell(office, figure);
        return new TypedFigure(HALL, VotingHours.REGULAR, figure, seen.number(), seen.noteNo(), number);
    }

    private static SaveFigures all(TypedFigure... typed) {
        return new SaveFigures(PRIMARY, List.of(typed), "The closing form.");
    }

    private static List<LedgerEntry> last(TestOffice office, int entries) {
        List<LedgerEntry> all = office.the(LedgerService.class).read(LedgerChain.of(PRIMARY), 0, 1_000);
        return all.subList(all.size() - entries, all.size());
    }

    private static long entries(TestOffice office) {
        return office.the(LedgerService.class).head(LedgerChain.of(PRIMARY)).sequence();
    }

    @OnBothDatabases
    void every_changed_figure_is_an_act_with_the_number_before_and_the_new_one(TestOffice office) {
        BalanceSheetService sheets = atGrangeHall(office);
        TypedFigure issued = typed(office, Figure.ISSUED, 7);
        TypedFigure missing = typed(office, Figure.MISSING, 0);
        long before = entries(office);
        assertThat(accepted(as("carl", () -> sheets.save(all(issued, missing)))))
                .containsExactly(issued, missing);
        assertThat(entries(office)).isEqualTo(before + 2);
        assertThat(last(office, 2)).extracting(LedgerEntry::act).containsOnly("figure_noted");
        assertThat(last(office, 2)).extracting(LedgerEntry::subject).containsOnly(HALL);
        assertThat(last(office, 2))
                .extracting(LedgerEntry::payload)
                .containsExactly(
                        Map.of("figure", "issued", "hours", "regular", "before", 6L, "number", 7L),
                        Map.of("figure", "missing", "hours", "regular", "number", 0L));
        assertThat(cell(office, Figure.ISSUED).number()).isEqualTo(7);
        assertThat(cell(office, Figure.ISSUED).words())
                .startsWith("noted by carl, ")
                .endsWith(", 6 before. Source: The closing form. The return says 6.");
    }

    @OnADatabase
    void a_figure_from_a_return_keeps_its_source_when_the_same_number_is_typed(TestOffice office) {
        BalanceSheetService sheets = atGrangeHall(office);
        TypedFigure spoiled = typed(office, Figure.SPOILED, 1);
        TypedFigure unused = typed(office, Figure.UNUSED, 32);
        long before = entries(office);
        assertThat(accepted(as("carl", () -> sheets.save(all(spoiled, unused)))))
                .containsExactly(unused);
        assertThat(entries(office)).isEqualTo(before + 1);
        assertThat(cell(office, Figure.SPOILED).source()).isEqualTo(FigureSource.RETURN);
        assertThat(cell(office, Figure.SPOILED).words()).isEqualTo("from the location's return");
        assertThat(cell(office, Figure.UNUSED).source()).isEqualTo(FigureSource.NOTE);
        assertThat(cell(office, Figure.UNACCOUNTED).source()).isEqualTo(FigureSource.NOBODY);
        assertThat(cell(office, Figure.RECEIVED).source()).isEqualTo(FigureSource.PROGRAM);
    }

    @OnBothDatabases
    void a_figure_that_somebody_else_noted_meanwhile_is_told_and_nothing_of_the_sheet_is_saved(TestOffice office) {
        BalanceSheetService sheets = atGrangeHall(office);
        TypedFigure issued = typed(office, Figure.ISSUED, 7);
        TypedFigure missing = typed(office, Figure.MISSING, 2);
        accepted(as(
                "dora",
                () -> office.the(CanvassService.class)
                        .noteFigure(new NoteFigure(PRIMARY, HALL, VotingHours.REGULAR, Figure.ISSUED, 8, "The log."))));
        assertThatThrownBy(() -> as("carl", () -> sheets.save(all(issued, missing))))
                .isInstanceOf(ChangedFigures.class)
                .hasMessage("Changed: " + HALL + ", issued.");
        assertThat(cell(office, Figure.ISSUED).number()).isEqualTo(8);
        assertThat(cell(office, Figure.MISSING).number()).isNull();
    }

    @OnADatabase
    void a_figure_that_a_return_changed_meanwhile_is_told_too(TestOffice office) {
        BalanceSheetService sheets = atGrangeHall(office);
        TypedFigure issued = typed(office, Figure.ISSUED, 7);
        transmittal(office, 3);
        assertThatThrownBy(() -> as("carl", () -> sheets.save(all(issued)))).isInstanceOf(ChangedFigures.class);
        assertThat(cell(office, Figure.ISSUED).number()).isEqualTo(9);
    }

    @OnADatabase
    void a_sheet_that_is_saved_twice_is_noted_once(TestOffice office) {
        BalanceSheetService sheets = atGrangeHall(office);
        SaveFigures pressed = all(typed(office, Figure.ISSUED, 7));
        accepted(as("carl", () -> sheets.save(pressed)));
        long once = entries(office);
        assertThat(accepted(as("carl", () -> sheets.save(pressed)))).isEmpty();
        assertThat(entries(office)).isEqualTo(once);
    }

    @OnADatabase
    void what_the_program_counts_is_not_typed_and_a_figure_has_a_source(TestOffice office) {
        BalanceSheetService sheets = atGrangeHall(office);
        ActResult<List<TypedFigure>> counted =
                as("carl", () -> sheets.save(all(typed(office, Figure.RECEIVED, 5), typed(office, Figure.ISSUED, 5))));
        assertThat(why(counted)).isEqualTo(Why.COUNTED_NOT_NOTED);
        TypedFigure sum = new TypedFigure(CanvassService.COUNTY, VotingHours.REGULAR, Figure.ISSUED, null, 0, 5);
        assertThat(why(as("carl", () -> sheets.save(all(sum)))))
                .as("the county's is the sum of its locations'")
                .isEqualTo(Why.COUNTED_NOT_NOTED);
        ActResult<List<TypedFigure>> unsourced =
                as("carl", () -> sheets.save(new SaveFigures(PRIMARY, List.of(typed(office, Figure.ISSUED, 5)), " ")));
        assertThat(field(unsourced)).isEqualTo("because");
        assertThat(cell(office, Figure.ISSUED).number()).isEqualTo(6);
    }

    @OnADatabase
    void the_totals_are_told_as_they_would_be_before_anything_is_saved(TestOffice office) {
        BalanceSheetService sheets = atGrangeHall(office);
        SheetOfBalances sheet = as("carl", () -> sheets.sheet(PRIMARY));
        List<TypedFigure> typed = List.of(typed(office, Figure.MISSING, 0), typed(office, Figure.UNACCOUNTED, 6));
        assertThat(sheet.with(typed).get(0).locations().get(HALL).figures())
                .containsEntry(Figure.MISSING, 0)
                .containsEntry(Figure.UNACCOUNTED, 6)
                .containsEntry(Figure.ISSUED, 6);
        assertThat(cell(office, Figure.MISSING).number()).isNull();
    }

    @OnADatabase
    void nothing_is_typed_once_the_election_is_closed(TestOffice office) {
        BalanceSheetService sheets = atGrangeHall(office);
        TypedFigure issued = typed(office, Figure.ISSUED, 7);
        office.inTransaction(() -> {
            office.the(ElectionService.class).close(PRIMARY);
            return true;
        });
        assertThat(why(as("carl", () -> sheets.save(all(issued))))).isEqualTo(Why.ELECTION_CLOSED);
        assertThat(LoadedOffice.lastEntry(office).act()).isNotEqualTo("figure_noted");
    }
}
