package org.proviso.review.queue;

import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.proviso.core.adjudication.CaseReport;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.SignatureComparisonFact;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.core.adjudication.questions.Answer;
import org.proviso.core.adjudication.questions.QuestionHeading;
import org.proviso.core.calendar.Deadline;

/** Where a case stands in the queue: why, and the moment that counts there (null where nobody noted one). */
record QueuePlace(QueueReason turn, @Nullable LocalDateTime at) {

    /** Voter deadlines come first; after that, the earliest vote. */
    static QueuePlace of(CaseReport report) {
        Optional<LocalDateTime> until = until(report);
        if (report.recommendation() == Recommendation.WAIT_FOR_THE_VOTER) {
            return new QueuePlace(QueueReason.VOTER, until.orElse(null));
        }
        if (onlySignatureIsOpen(report) && firstLookDiffers(report)) {
            return new QueuePlace(
                    QueueReason.SECOND_LOOK, report.envelope().cast().at());
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

    private static boolean onlySignatureIsOpen(CaseReport report) {
        Set<QuestionHeading> open = report.settled().answered().stream()
                .filter(answeredQuestion -> answeredQuestion.answer() instanceof Answer.Open)
                .map(answeredQuestion -> answeredQuestion.question().heading())
                .collect(Collectors.toSet());
        return open.equals(Set.of(QuestionHeading.SIGNATURE));
    }

    private static boolean firstLookDiffers(CaseReport report) {
        return report.settled().facts().one(Fact.SIGNATURE_COMPARISON) == SignatureComparisonFact.DIFFERS_BY_ONE;
    }
}
