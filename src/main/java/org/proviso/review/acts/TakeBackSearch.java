package org.proviso.review.acts;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.proviso.core.EnvelopeKey;

/** A search that settled that a voter is not on the roll was recorded by mistake, and why it is taken back. */
public record TakeBackSearch(
        @NotNull EnvelopeKey key,
        int version,
        @NotBlank @Size(max = 1000) String because) {}
