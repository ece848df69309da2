package org.proviso.review;

import org.proviso.core.Code;
import org.proviso.core.adjudication.Recommendation;
import org.proviso.core.adjudication.kept.KeptAssessment;
import org.proviso.core.adjudication.kept.Origins;

/** One way of one assessment of a case as its row has it; the words of an older version may be unknown to this one. */
record StoredAssessment(
        String envelopeNo,
        int number,
        Origins origins,
        String recommendation,
        String reasons,
        boolean heldApart,
        String content) {

    /** The same with its words read. */
    KeptAssessment kept() {
        return new KeptAssessment(
                origins.way(),
                origins.facts(),
                origins.asOf(),
                origins.packHash(),
                origins.engineVersion(),
                Code.find(Recommendation.class, recommendation).orElseThrow(),
                CodeList.reasons(reasons),
                heldApart,
                content);
    }
}
