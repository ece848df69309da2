package org.proviso.review;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.proviso.SampleCases;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
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

    public static EnvelopeKey key(EnvelopeNumber envelopeNo) {
        return new EnvelopeKey(new ElectionId(ID), envelopeNo);
    }

    public AssessmentStore store() {
        return office.the(AssessmentStore.class);
    }

    /** The three ways of every case of these, by envelope. */
    public static Map<EnvelopeNumber, List<KeptAssessment>> ways(SampleCases cases) {
        Map<EnvelopeNumber, List<KeptAssessment>> ways = new LinkedHashMap<>();
        for (CaseReport report : cases.reports()) {
            ways.put(report.envelope().envelopeNo(), KeptAssessment.of(report, Map.of(), cases.book(), cases.asOf()));
        }
        return ways;
    }

    /** Assesses every case once more, as if its link were confirmed. */
    public Map<EnvelopeNumber, List<KeptAssessment>> assessConfirmed() {
        Map<EnvelopeNumber, List<KeptAssessment>> ways = ways(cases.confirmed());
        office.inTransaction(() -> {
            ways.forEach((envelope, three) -> store().insert(new ElectionId(ID), Map.of(key(envelope), three)));
            return true;
        });
        return ways;
    }
}
