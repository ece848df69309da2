package org.proviso.core.adjudication;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.proviso.core.Envelope;
import org.proviso.core.Voter;
import org.proviso.core.adjudication.finding.FactFinder;
import org.proviso.core.adjudication.finding.Link;
import org.proviso.core.adjudication.judging.AnsweredQuestion;
import org.proviso.core.adjudication.judging.Assessment;
import org.proviso.core.adjudication.judging.DueAsk;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.core.adjudication.questions.Answer;
import org.proviso.core.adjudication.questions.QuestionHeading;

/**
 * One case seen three ways: as it stands (what the records say counts only over a settled link), over the presumed
 * link with what is open left open, and the outlook, where everything open comes out as the records suggest.
 */
public record CaseReport(
        Envelope envelope,
        Link link,
        Optional<Voter> voter,
        Assessment settled,
        Assessment presumed,
        Assessment outlook) {

    public Recommendation recommendation() {
        return settled.outcome().recommendation();
    }

    /** What is still to be done before anybody decides, the link first. */
    public List<String> stillOpen() {
        List<String> open = new ArrayList<>();
        Set<String> seen = new LinkedHashSet<>();
        for (AnsweredQuestion answeredQuestion : presumed.answered()) {
            if (answeredQuestion.answer() instanceof Answer.Open missing
                    && !waitsForVoter(answeredQuestion)
                    && seen.add(missing.missing())) {
                boolean who = answeredQuestion.question().heading() == QuestionHeading.VOTER;
                open.add(who ? 0 : open.size(), missing.missing());
            }
        }
        return open;
    }

    /** Whether an answer is open only because it is not known yet whose records to check. */
    public boolean waitsForVoter(AnsweredQuestion answeredQuestion) {
        return voter.isEmpty()
                && answeredQuestion.answer() instanceof Answer.Open
                && answeredQuestion.question().reads().stream()
                        .anyMatch(fact -> FactFinder.OF_THE_VOTER.contains(fact)
                                && !presumed.facts().finding(fact).isKnown());
    }

    /** What the voter may still bring; due to be told at once, whatever the recommendation says. */
    public List<DueAsk> asks() {
        return outlook.asks();
    }
}
