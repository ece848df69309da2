package org.proviso.core.adjudication.kept;

import java.time.LocalDateTime;
import java.util.Map;
import org.proviso.core.adjudication.judging.Assessment;
import org.proviso.core.chain.CanonicalJsonReader;
import org.proviso.core.chain.Sha256;

/** What an assessment was made from: its way, the text of its facts, its moment, its rules and the engine's version. */
public record AssessmentOrigins(
        AssessmentKind way, String facts, LocalDateTime asOf, String packHash, int engineVersion) {

    /** Whether this version of the engine made it; only then can it be made again. */
    public boolean areOfThisEngine() {
        return engineVersion == Assessment.ENGINE_VERSION;
    }

    /** Whether a content says that it was made from these; one that cannot be read is an {@link IllegalArgumentException}. */
    public boolean areSaidBy(String content) {
        return spelled().equals(CanonicalJsonReader.object(content).get("made_from"));
    }

    /** As the content has them, the facts by their hash. */
    Map<String, Object> spelled() {
        return Map.of(
                "way", way.code(),
                "facts", Sha256.of(facts),
                "as_of", asOf.toString(),
                "pack", packHash,
                "engine_version", (long) engineVersion);
    }
}
