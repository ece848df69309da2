package org.proviso.board;

import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.rules.Reason;

/**
 * Moves something of one envelope, or of a consent group, each in the version of its case that the mover saw.
 * {@code contests} are those that count where a part does otherwise than recommended (empty: as recommended);
 * {@code because} says why it departs from the recommendation, or why to table or to reopen.
 */
public record MoveMotion(
        @NotNull SessionKey session,
        @NotNull MotionKind kind,
        @NotEmpty Map<EnvelopeNumber, Integer> envelopes,
        @NotNull Set<String> contests,
        @NotNull List<Reason> reasons,
        @NotNull @Size(max = 1000) String legalReference,
        @NotNull @Size(max = 2000) String because) {}
