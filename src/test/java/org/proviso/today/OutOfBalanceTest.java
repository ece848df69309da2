package org.proviso.today;

import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.journey.Office.as;

import org.proviso.canvass.CanvassService;
import org.proviso.core.ElectionId;
import org.proviso.database.OnADatabase;
import org.proviso.database.TestOffice;
import org.proviso.journey.Primary;

/** The start page names the voting locations whose return is not here, and no others. */
class OutOfBalanceTest {

    private static final ElectionId PRIMARY = new ElectionId(Primary.ID);

    private static OutOfBalance.Found found(TestOffice office) {
        OutOfBalance sums = new OutOfBalance(office.the(CanvassService.class));
        return as("carl", () -> sums.of(PRIMARY));
    }

    @OnADatabase
    void a_location_whose_return_is_here_is_not_called_silent(TestOffice office) {
        Primary.loaded(office);
        assertThat(found(office).withoutReturn())
                .as("one of them has envelopes of extended hours, so that its return has to be split")
                .isEmpty();
    }

    @OnADatabase
    void a_location_without_its_return_is_named_even_if_no_envelope_came_from_it(TestOffice office) {
        Primary.loaded(office);
        office.jdbc()
                .sql("update precinct_part set voting_location = 'Old Mill Annex' where precinct ="
                        + " (select min(precinct) from precinct_part)")
                .update();
        // what is on the ballots is read once for the files an election came from
        office.jdbc().sql("update election set content_hash = 'another'").update();
        office.jdbc()
                .sql("delete from transmittal where voting_location in ('Depot Street Library', 'Foundry Arts Center')")
                .update();
        assertThat(found(office).withoutReturn())
                .containsExactly("Depot Street Library", "Foundry Arts Center", "Old Mill Annex");
    }
}
