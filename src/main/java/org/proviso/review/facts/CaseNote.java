package org.proviso.review.facts;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.proviso.core.UserName;

/**
 * What somebody wrote down about a case: by whom (with the full name) and when (UTC). {@code corrects} is the number of the
 * note that it takes the place of; {@code corrected} whether a newer one took its own.
 */
public record CaseNote(
        int number,
        String words,
        @Nullable Integer corrects,
        UserName writtenBy,
        String fullName,
        Instant writtenAt,
        boolean corrected) {}
