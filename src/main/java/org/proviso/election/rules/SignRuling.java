package org.proviso.election.rules;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.time.LocalDate;
import org.proviso.core.CountyRuling;
import org.proviso.core.ElectionId;

/** The office's signed word on one rule for one election; an empty value confirms the one that the pack gives. */
public record SignRuling(
        @NotNull ElectionId electionId,
        @NotBlank @Size(max = 100) String rule,
        @NotNull @Size(max = 500) String value,
        @NotBlank @Size(max = 200) String signedBy,
        @NotNull LocalDate on,
        @NotBlank @Size(max = 4000) String ground) {

    CountyRuling ruling() {
        return new CountyRuling(rule, value.strip(), signedBy, on, ground);
    }
}
