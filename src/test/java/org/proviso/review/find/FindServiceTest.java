package org.proviso.review.find;

import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.journey.Office.as;

import java.util.List;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;
import org.proviso.database.OnADatabase;
import org.proviso.database.TestOffice;
import org.proviso.journey.Primary;
import org.proviso.review.CaseState;

/** An envelope or a voter is found by a name however it is typed. */
class FindServiceTest {

    private static FindResult find(TestOffice office, String typed) {
        return as("ada", () -> office.the(FindService.class).find(new ElectionId(Primary.ID), typed));
    }

    @OnADatabase
    void a_name_is_found_with_a_comma_and_either_way_round(TestOffice office) {
        Primary.loaded(office);
        for (String typed : List.of("Okafor, Craig", "Craig Okafor", "Okafor Craig", "okafor craig", "OKAFOR, c")) {
            assertThat(find(office, typed).envelopes())
                    .as(typed)
                    .extracting(hit -> hit.envelopeNo().value())
                    .contains("P-1001");
        }
    }

    @OnADatabase
    void a_voter_found_by_a_former_name_is_marked(TestOffice office) {
        Primary.loaded(office);
        assertThat(find(office, "Ashby Katherine").voters())
                .filteredOn(hit -> hit.voter().voterId().value().equals("T1215173"))
                .singleElement()
                .returns(true, FindResult.VoterHit::byFormerName);
        assertThat(find(office, "Hendricks, Katherine").voters())
                .filteredOn(hit -> hit.voter().voterId().value().equals("T1215173"))
                .singleElement()
                .returns(false, FindResult.VoterHit::byFormerName);
    }

    @OnADatabase
    void an_envelope_is_found_with_why_it_was_issued_its_outlook_and_who_has_it(TestOffice office) {
        Primary primary = Primary.loaded(office);
        primary.taken(new EnvelopeKey(new ElectionId(Primary.ID), new EnvelopeNumber("P-1034")), new UserName("ben"));
        assertThat(find(office, "P-1034").envelopes())
                .singleElement()
                .returns("court_hours;no_id", FindResult.EnvelopeHit::reasons)
                .returns("104", FindResult.EnvelopeHit::precinct)
                .returns("ben", FindResult.EnvelopeHit::holder)
                .returns(CaseState.IN_REVIEW, FindResult.EnvelopeHit::state);
    }
}
