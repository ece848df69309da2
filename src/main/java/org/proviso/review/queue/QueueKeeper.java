package org.proviso.review.queue;

import org.proviso.core.adjudication.CaseReport;
import org.proviso.core.adjudication.WaitingForRuling;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.SignatureComparisonFact;
import org.proviso.review.CaseChanged;
import org.proviso.review.assess.AssessmentService;
import org.proviso.review.news.CaseDifference;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** Keeps each case at its place in the queue, in the transaction in which the rules said something new about it. */
@Component
class QueueKeeper {

    private final QueueStore queue;
    private final AssessmentService assessments;

    QueueKeeper(QueueStore queue, AssessmentService assessments) {
        this.queue = queue;
        this.assessments = assessments;
    }

    @EventListener
    @Transactional(propagation = Propagation.MANDATORY)
    public void place(CaseChanged changed) {
        CaseReport known = known(changed);
        queue.place(
                changed.report().envelope(),
                changed.key().electionId(),
                QueuePlace.of(known),
                known.outlook().outcome().recommendation(),
                new QueueStore.Waiting(
                        WaitingForRuling.rulesToRuleOn(changed.report(), changed.pack()),
                        changed.pack().hash()));
    }

    /** The queue tells nobody that one reviewer found the signature different. */
    private CaseReport known(CaseChanged changed) {
        boolean waits = changed.report().presumed().facts().one(Fact.SIGNATURE_COMPARISON)
                == SignatureComparisonFact.DIFFERS_BY_ONE;
        return waits ? assessments.beforeLooks(changed.key()) : changed.report();
    }

    @EventListener
    @Transactional(propagation = Propagation.MANDATORY)
    public void bringForward(CaseDifference difference) {
        queue.changed(difference.key());
    }
}
