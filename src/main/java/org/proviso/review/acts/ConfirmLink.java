package org.proviso.review.acts;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.proviso.review.CaseKey;

/** That an envelope is this voter's; the ground is needed where the match did not name the voter first. */
public record ConfirmLink(
        @NotNull CaseKey key,
        int version,
        @NotBlank @Size(max = 60) String voterId,
        @NotNull @Size(max = 4000) String ground) {}
