package org.proviso.review.replay;

import org.proviso.core.Code;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.core.adjudication.kept.AssessmentOrigins;
import org.proviso.core.adjudication.kept.KeptAssessment;
import org.proviso.review.CodeListColumn;

/** One way of one assessment of a case as its row has it; the words of an older version may be unknown to this one. */
public record StoredAssessment(
        EnvelopeNumber envelopeNo,
        int number,
        AssessmentOrigins origins,
        String recommendation,
        String reasons,
        boolean heldApart,
        String content) {

    /** The same with its words read. */
    public KeptAssessment kept() {
        return new KeptAssessment(
                origins.way(),
                origins.facts(),
                origins.asOf(),
                origins.packHash(),
                origins.engineVersion(),
                Code.find(Recommendation.class, recommendation).orElseThrow(),
                CodeListColumn.reasons(reasons),
                heldApart,
                content);
    }
}
