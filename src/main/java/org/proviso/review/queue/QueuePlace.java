package org.proviso.review.queue;

import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.proviso.core.adjudication.CaseReport;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.core.calendar.Deadline;

/** Where a case stands in the queue: why, and the moment that counts there (null where nobody noted one). */
record QueuePlace(QueueReason turn, @Nullable LocalDateTime at) {

    /**
     * Voter deadlines come first; after that, the earliest vote. A case that waits for a second look at its signature waits in
     * its turn like one that nobody looked at.
     */
    static QueuePlace of(CaseReport report) {
        Optional<LocalDateTime> until = until(report);
        if (report.recommendation() == Recommendation.WAIT_FOR_THE_VOTER) {
            return new QueuePlace(QueueReason.VOTER, until.orElse(null));
        }
        return until.map(at -> new QueuePlace(QueueReason.CURE, at))
                .orElseGet(() -> new QueuePlace(
                        QueueReason.IN_TURN, report.envelope().cast().at()));
    }

    private static Optional<LocalDateTime> until(CaseReport report) {
        return report.asks().stream()
                .flatMap(ask -> ask.deadline().stream())
                .map(Deadline::lastMoment)
                .min(Comparator.naturalOrder());
    }
}
