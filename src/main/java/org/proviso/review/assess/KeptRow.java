package org.proviso.review.assess;

import java.time.LocalDateTime;
import org.jspecify.annotations.Nullable;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.adjudication.kept.AssessmentKind;
import org.proviso.core.adjudication.kept.AssessmentOrigins;

/**
 * One way of one assessment as its row has it: its texts made small or, of an older row, as they are. The words of an older
 * version may be unknown to this one.
 */
@SuppressWarnings("ArrayRecordComponent") // read once, compared by nobody
public record KeptRow(
        EnvelopeNumber envelopeNo,
        int assessmentNo,
        AssessmentKind way,
        @Nullable String facts,
        LocalDateTime asOf,
        String packHash,
        int engineVersion,
        String recommendation,
        String reasons,
        boolean heldApart,
        @Nullable String content,
        byte @Nullable [] texts) {

    /** Its facts and its content; an {@link IllegalArgumentException} where the bytes are none. */
    public KeptTexts read() {
        return texts != null
                ? KeptTexts.of(texts)
                : new KeptTexts(facts == null ? "" : facts, content == null ? "" : content);
    }

    /** What it was made from, with the facts that were read. */
    public AssessmentOrigins origins(String readFacts) {
        return new AssessmentOrigins(way, readFacts, asOf, packHash, engineVersion);
    }
}
