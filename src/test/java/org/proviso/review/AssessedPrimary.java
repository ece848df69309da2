package org.proviso.review;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.proviso.SampleCases;
import org.proviso.core.adjudication.CaseReport;
import org.proviso.core.adjudication.kept.KeptAssessment;
import org.proviso.database.TestOffice;
import org.proviso.intake.LoadedOffice;
import org.proviso.review.assess.AssessmentStore;

/** The samples' primary in an office, where the load opened and assessed the case of each of its 60 envelopes. */
public record AssessedPrimary(TestOffice office, SampleCases cases) {

    public static final String ID = LoadedOffice.ID;

    public static AssessedPrimary load(TestOffice office) {
        LoadedOffice.primary(office);
        return new AssessedPrimary(office, SampleCases.presumed(ID));
    }

    public static CaseKey key(String envelopeNo) {
        return new CaseKey(ID, envelopeNo);
    }

    public AssessmentStore store() {
        return office.the(AssessmentStore.class);
    }

    /** The three ways of every case of these, by envelope. */
    public static Map<String, List<KeptAssessment>> ways(SampleCases cases) {
        Map<String, List<KeptAssessment>> ways = new LinkedHashMap<>();
        for (CaseReport report : cases.reports()) {
            ways.put(report.envelope().envelopeNo(), KeptAssessment.of(report, Map.of(), cases.book(), cases.asOf()));
        }
        return ways;
    }

    /** Assesses every case once more, as if its link were confirmed. */
    public Map<String, List<KeptAssessment>> assessConfirmed() {
        Map<String, List<KeptAssessment>> ways = ways(cases.confirmed());
        office.inTransaction(() -> {
            ways.forEach((envelope, three) -> store().insert(ID, Map.of(key(envelope), three)));
            return true;
        });
        return ways;
    }
}
