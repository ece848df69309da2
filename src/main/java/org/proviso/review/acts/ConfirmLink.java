package org.proviso.review.acts;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.VoterId;

/** That an envelope is this voter's; the ground is needed where the match did not name the voter first. */
public record ConfirmLink(
        @NotNull EnvelopeKey key,
        int version,
        @NotNull VoterId voterId,
        @NotNull @Size(max = 4000) String ground) {}
