package org.proviso.review.mail;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.proviso.core.ElectionId;

/** Another answer to one line than was recorded, with the reason; {@code seen} is the number of the answer on the page. */
public record CorrectDeskAnswer(
        @NotNull ElectionId electionId,
        int listNo,
        int lineNo,
        int seen,
        @NotNull DeskAnswer answer,
        @Nullable LocalDate answeredOn,
        @NotNull @Size(max = 200) String answeredBy,
        @NotNull @Size(max = 4000) String because) {}
