package org.proviso.review.mail;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.time.LocalDate;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.proviso.core.ElectionId;

/**
 * What came back from the mail-ballot desk: the day (null where it is missing), who answered there, and the answer to each
 * line by its number on the list. Lines left out stay open.
 */
public record RecordDeskAnswers(
        @NotNull ElectionId electionId,
        int listNo,
        @Nullable LocalDate answeredOn,
        @NotNull @Size(max = 200) String answeredBy,
        @NotNull Map<Integer, DeskAnswer> answers) {}
