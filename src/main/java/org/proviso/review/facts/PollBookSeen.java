package org.proviso.review.facts;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.proviso.core.EnvelopeKey;

/** What a person saw in the poll book of another location: whether the voter signed there, and what else it shows. */
public record PollBookSeen(
        @NotNull EnvelopeKey key,
        int version,
        boolean voterSigned,
        @NotBlank @Size(max = 4000) String seen) {}
