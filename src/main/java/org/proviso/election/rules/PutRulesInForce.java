package org.proviso.election.rules;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.proviso.core.ElectionId;

/**
 * A rule pack, as its file has it, to take the place of the one in force for an election. Counsel and ground are given
 * only where the pack fails the proof and counsel takes it upon themselves all the same.
 */
public record PutRulesInForce(
        @NotNull ElectionId electionId,
        @NotBlank @Size(max = 2_000_000) String content,
        @NotNull @Size(max = 200) String counsel,
        @NotNull @Size(max = 4000) String ground) {

    boolean isOverride() {
        return !counsel.isBlank() && !ground.isBlank();
    }
}
