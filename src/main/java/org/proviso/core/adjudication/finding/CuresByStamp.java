package org.proviso.core.adjudication.finding;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.proviso.core.adjudication.facts.FactWord;
import org.proviso.core.calendar.Deadline;
import org.proviso.core.rules.Ask;
import org.proviso.core.rules.DeadlineBook;

/** What a voter brought, weighed by its stamp: in time or too late. */
record CuresByStamp(List<CureEvidence> brought, DeadlineBook book, Map<Ask, LocalDateTime> noticesSent) {

    /**
     * The finding as cured, or the first one where nothing was brought or no deadline can be told. What comes before the
     * board's meeting is called is in time.
     */
    Finding weigh(Ask ask, Finding before, FactWord inTime, FactWord late) {
        Optional<Deadline> deadline = book.cure(ask, noticesSent.get(ask));
        boolean stillOpen = book.waitsForTheMeeting(ask);
        Finding after = before;
        for (CureEvidence cure : brought) {
            if (cure.ask() != ask || (deadline.isEmpty() && !stillOpen) || after.says(inTime)) {
                continue;
            }
            List<Evidence> evidence = new ArrayList<>(after.evidence());
            evidence.add(cure.evidence());
            boolean passed =
                    deadline.filter(until -> until.hasPassed(cure.receivedAt())).isPresent();
            after = new Finding(Set.of(passed ? late : inTime), evidence);
        }
        return after;
    }
}
