package org.proviso.core.adjudication.kept;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.proviso.core.adjudication.finding.CaseFacts;
import org.proviso.core.adjudication.judging.ElectionClocks;
import org.proviso.core.adjudication.questions.QuestionContext;
import org.proviso.core.calendar.DeadlineAnchor;
import org.proviso.core.rules.Ask;
import org.proviso.core.rules.DeadlineBook;
import org.proviso.core.rules.ResolvedPack;

/**
 * All that an assessment is made from apart from the rules and the as-of moment: the facts of the case, when the notice
 * of each ask was sent (local to the county), the days closed for the election, which move deadlines, and when the
 * board meets (null where no deadline counts from that, or no meeting was called).
 */
public record KeptFacts(
        CaseFacts facts,
        Map<Ask, LocalDateTime> noticesSent,
        Set<LocalDate> daysClosed,
        @Nullable LocalDateTime meeting) {

    /** The facts of an election whose deadlines count from no meeting. */
    public KeptFacts(CaseFacts facts, Map<Ask, LocalDateTime> noticesSent, Set<LocalDate> daysClosed) {
        this(facts, noticesSent, daysClosed, null);
    }

    /** The rules and clocks under which these facts were, or are, assessed. */
    public QuestionContext setting(ResolvedPack pack, LocalDateTime asOf) {
        DeadlineBook undated = DeadlineBook.of(pack, daysClosed);
        DeadlineBook book = meeting == null ? undated : undated.with(DeadlineAnchor.BOARD_MEETING, meeting);
        return new QuestionContext(pack, new ElectionClocks(book, asOf, noticesSent));
    }
}
