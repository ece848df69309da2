package org.proviso.core.adjudication.finding;

import java.time.LocalDateTime;
import org.jspecify.annotations.Nullable;

/**
 * Where a fact came from, in a sentence. Evidence on paper carries the stamp of its arrival, which decides whether it
 * is in time, and the moment of its keying, which does not; both local to the county.
 */
public record Evidence(
        EvidenceSource source,
        String words,
        @Nullable LocalDateTime receivedAt,
        @Nullable LocalDateTime recordedAt) {

    public static Evidence of(EvidenceSource source, String words) {
        return new Evidence(source, words, null, null);
    }
}
