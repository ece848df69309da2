package org.proviso.release;

import java.time.Instant;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.proviso.core.ElectionId;
import org.proviso.core.UserName;
import org.springframework.dao.OptimisticLockingFailureException;

/**
 * What to copy from ballots of one style to ballots of another: one sheet a pair of styles and list of contests, never
 * one an envelope. What has not happened is null.
 */
public record RemakeSheet(
        ElectionId electionId,
        int batchNo,
        int number,
        String styleCast,
        String styleRight,
        Set<String> contests,
        int ballots,
        @Nullable UserName firstCopier,
        @Nullable String secondCopier,
        @Nullable Instant remadeAt,
        int version) {

    /** The sheet, if it is as it was seen. */
    RemakeSheet at(int seen) {
        if (seen != version) {
            throw new OptimisticLockingFailureException("The sheet was changed meanwhile.");
        }
        return this;
    }
}
