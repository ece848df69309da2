package org.proviso.review.acts;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.proviso.core.EnvelopeKey;
import org.proviso.review.facts.OffRollReason;
import org.proviso.review.facts.SearchFound;
import org.proviso.review.facts.SearchPlace;

/**
 * A search for a voter whom no record fits: where was looked, what came of it, and, where the voter of another envelope
 * is the same person, that envelope's number (null where there is none).
 */
public record RecordSearch(
        @NotNull EnvelopeKey key,
        int version,
        @NotNull Set<SearchPlace> lookedIn,
        @NotNull SearchFound found,
        @NotNull OffRollReason because,
        @Nullable String sameVoterAs,
        @NotNull @Size(max = 4000) String note) {}
