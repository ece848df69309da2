package org.proviso.review.counts;

import static org.assertj.core.api.Assertions.assertThat;

import org.proviso.access.Staff;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.database.OnBothDatabases;
import org.proviso.database.TestOffice;
import org.proviso.journey.Office;
import org.proviso.journey.Primary;
import org.proviso.review.CaseService;
import org.proviso.review.CaseState;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.acts.CaseAssignmentService;

/** The numbers on the first page are those of the tables. */
class CaseCountsServiceTest {

    private static CaseCounts tally(TestOffice office, String reader) {
        return Office.as(reader, () -> office.the(CaseCountsService.class).of(new ElectionId(Primary.ID)));
    }

    @OnBothDatabases
    void a_case_moves_from_those_waiting_to_whoever_took_it(TestOffice office) {
        Primary primary = Primary.loaded(office);
        CaseCounts before = tally(office, "ada");
        EnvelopeKey key = new EnvelopeKey(
                new ElectionId(Primary.ID),
                office.the(CaseService.class)
                        .inState(new ElectionId(Primary.ID), CaseState.OPEN)
                        .get(0)
                        .key()
                        .envelopeNo());
        EnvelopeCase seen = primary.now(key);
        Office.as("ada", () -> office.the(CaseAssignmentService.class).take(key, seen.version()));
        CaseCounts after = tally(office, "ada");
        assertThat(before.all())
                .isEqualTo(after.all())
                .isEqualTo(office.the(CaseService.class)
                        .all(new ElectionId(Primary.ID))
                        .size());
        assertThat(before.toGo()).isEqualTo(before.all());
        assertThat(after.in(CaseState.OPEN)).isEqualTo(before.in(CaseState.OPEN) - 1);
        assertThat(after.withYou()).isEqualTo(1);
        assertThat(tally(office, "ben").withYou()).isZero();
        Staff.signOut();
    }
}
