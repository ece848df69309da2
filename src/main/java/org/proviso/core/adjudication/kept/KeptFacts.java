package org.proviso.core.adjudication.kept;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Map;
import java.util.Set;
import org.proviso.core.adjudication.finding.CaseFacts;
import org.proviso.core.adjudication.judging.ElectionClocks;
import org.proviso.core.adjudication.questions.QuestionContext;
import org.proviso.core.rules.Ask;
import org.proviso.core.rules.DeadlineBook;
import org.proviso.core.rules.ResolvedPack;

/**
 * All that an assessment is made from apart from the rules and the as-of moment: the facts of the case, when the notice
 * of each ask was sent (local to the county), and the days closed for the election, which move deadlines.
 */
public record KeptFacts(CaseFacts facts, Map<Ask, LocalDateTime> noticesSent, Set<LocalDate> daysClosed) {

    /** The rules and clocks under which these facts were, or are, assessed. */
    public QuestionContext setting(ResolvedPack pack, LocalDateTime asOf) {
        return new QuestionContext(pack, new ElectionClocks(DeadlineBook.of(pack, daysClosed), asOf, noticesSent));
    }
}
