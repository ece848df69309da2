package org.proviso.review.acts;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.time.LocalDateTime;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.FactWord;

/**
 * That a fact is otherwise than the records say, with the reason, and the stamp of the paper it rests on (local to the
 * county, null where there is none).
 */
public record RecordAnswer(
        @NotNull EnvelopeKey key,
        int version,
        @NotNull Fact<?> fact,
        @NotEmpty Set<? extends FactWord> words,
        @NotBlank @Size(max = 4000) String reason,
        @Nullable LocalDateTime receivedAt) {}
