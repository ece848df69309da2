package org.proviso.review.assess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.proviso.review.AssessedPrimary.ID;
import static org.proviso.review.AssessedPrimary.key;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.proviso.SampleCases;
import org.proviso.access.Staff;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.adjudication.CaseReport;
import org.proviso.core.adjudication.kept.KeptAssessment;
import org.proviso.database.OnBothDatabases;
import org.proviso.database.TestOffice;
import org.proviso.review.AssessedPrimary;
import org.proviso.review.replay.KeptAssessmentStore;
import org.proviso.review.replay.StoredAssessment;
import org.springframework.dao.DataIntegrityViolationException;

/** Assessments are added and never changed; the newest is what a list shows. */
class AssessmentStoreTest {

    @AfterEach
    void signOut() {
        Staff.signOut();
    }

    @OnBothDatabases
    void every_assessment_comes_back_to_the_last_letter(TestOffice office) {
        Map<EnvelopeNumber, List<KeptAssessment>> ways =
                AssessedPrimary.load(office).assessConfirmed();
        List<KeptAssessment> back = new ArrayList<>();
        for (StoredAssessment stored :
                office.the(KeptAssessmentStore.class).between(new ElectionId(ID), "P-1001", "P-1060")) {
            if (stored.number() == 2) {
                back.add(stored.kept());
            }
        }
        assertThat(back)
                .hasSize(3 * 60)
                .containsExactlyInAnyOrderElementsOf(
                        ways.values().stream().flatMap(List::stream).toList());
    }

    @OnBothDatabases
    void a_list_shows_the_newest_assessment_of_every_case(TestOffice office) {
        AssessedPrimary primary = AssessedPrimary.load(office);
        AssessmentStore store = primary.store();
        List<AssessmentRow> first = store.latest(new ElectionId(ID));
        assertThat(first)
                .hasSize(60)
                .allMatch(row -> row.number() == 1)
                .extracting(row -> row.key().envelopeNo())
                .isSorted();
        SampleCases later = primary.cases().confirmed();
        CaseReport report = later.reports().get(1);
        EnvelopeKey key = key(report.envelope().envelopeNo());
        List<KeptAssessment> ways = KeptAssessment.of(report, Map.of(), later.book(), later.asOf());
        assertThat(store.sayingTheSame(new ElectionId(ID), Map.of(key, ways))).isEmpty();
        assertThat(store.insert(new ElectionId(ID), Map.of(key, ways))).isEqualTo(Map.of(key, 2));
        assertThat(store.sayingTheSame(new ElectionId(ID), Map.of(key, ways))).containsExactly(key);
        AssessmentRow newest = row(key, report, later);
        assertThat(store.latest(key)).contains(newest);
        List<AssessmentRow> expected = new ArrayList<>(first);
        expected.set(1, newest);
        assertThat(store.latest(new ElectionId(ID))).isEqualTo(expected);
        assertThat(store.latest(key(new EnvelopeNumber("P-none")))).isEmpty();
    }

    private static AssessmentRow row(EnvelopeKey key, CaseReport report, SampleCases cases) {
        return new AssessmentRow(
                key,
                2,
                cases.asOf(),
                report.recommendation(),
                report.settled().outcome().reasons(),
                report.settled().heldApart(),
                report.outlook().outcome().recommendation(),
                report.outlook().outcome().reasons());
    }

    @OnBothDatabases
    void an_assessment_under_rules_that_are_not_kept_is_refused_whole(TestOffice office) {
        AssessedPrimary primary = AssessedPrimary.load(office);
        List<AssessmentRow> before = primary.store().latest(new ElectionId(ID));
        SampleCases general = SampleCases.presumed("tamarack-general");
        List<KeptAssessment> ofOtherRules =
                KeptAssessment.of(general.reports().get(0), Map.of(), general.book(), general.asOf());
        assertThatThrownBy(() -> office.inTransaction(() -> primary.store()
                        .insert(new ElectionId(ID), Map.of(key(new EnvelopeNumber("P-1001")), ofOtherRules))))
                .isInstanceOf(DataIntegrityViolationException.class);
        assertThat(primary.store().latest(new ElectionId(ID))).isEqualTo(before);
    }
}
