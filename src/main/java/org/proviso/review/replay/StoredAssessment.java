package org.proviso.review.replay;

import org.proviso.core.Code;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.core.adjudication.kept.AssessmentOrigins;
import org.proviso.core.adjudication.kept.KeptAssessment;
import org.proviso.review.CodeListColumn;
import org.proviso.review.assess.KeptRow;
import org.proviso.review.assess.KeptTexts;

/** One way of one assessment of a case as its row has it; the words of an older version may be unknown to this one. */
public record StoredAssessment(
        EnvelopeNumber envelopeNo,
        int number,
        AssessmentOrigins origins,
        String recommendation,
        String reasons,
        boolean heldApart,
        String content) {

    /** Bytes that are no texts are read as empty ones, which nothing was made from. */
    static StoredAssessment of(KeptRow row) {
        KeptTexts texts;
        try {
            texts = row.read();
        } catch (IllegalArgumentException e) {
            texts = new KeptTexts("", "");
        }
        return new StoredAssessment(
                row.envelopeNo(),
                row.assessmentNo(),
                row.origins(texts.facts()),
                row.recommendation(),
                row.reasons(),
                row.heldApart(),
                texts.content());
    }

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
