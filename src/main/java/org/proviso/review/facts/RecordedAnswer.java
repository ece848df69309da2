package org.proviso.review.facts;

import java.time.Instant;
import java.time.LocalDateTime;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.proviso.core.UserName;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.FactWord;

/**
 * What a person recorded of one fact: the words that hold, the reason, the stamp of a paper it rests on (local to the
 * county, null where there is none), and who recorded it when.
 */
public record RecordedAnswer(
        int number,
        AnswerKind kind,
        Fact<?> fact,
        Set<? extends FactWord> words,
        String reason,
        @Nullable LocalDateTime receivedAt,
        UserName by,
        Instant at) {}
