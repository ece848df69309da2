package org.proviso.board;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.core.deciding.CountAgainstRules;

/**
 * An envelope of a motion: in the version of its case that the motion was made on, and whether it was pulled out. Where the
 * motion counts it against the rules' answer, {@code rulesSay} is that answer (null otherwise).
 */
public record MotionEnvelope(
        EnvelopeNumber envelopeNo,
        int caseVersion,
        boolean pulledOut,
        @Nullable Recommendation rulesSay,
        boolean knownToHaveVoted) {

    /** How the motion counts it against the rules; empty where it does not. */
    public Optional<CountAgainstRules> against() {
        return rulesSay == null ? Optional.empty() : Optional.of(new CountAgainstRules(rulesSay, knownToHaveVoted));
    }

    /** What the motion goes against, after the number of the envelope. */
    public String spoken() {
        return envelopeNo + ": " + against().map(CountAgainstRules::words).orElse("");
    }

    /** Whether it is the same envelope with its case as it was then. */
    boolean isSeenAs(MotionEnvelope other) {
        return envelopeNo.equals(other.envelopeNo) && caseVersion == other.caseVersion;
    }
}
