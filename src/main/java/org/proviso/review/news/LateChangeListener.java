package org.proviso.review.news;

import org.proviso.review.decide.ContradictedDecisions;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** Keeps in words what a newer record changed about a settled case, in the transaction of the change. */
@Component
class LateChangeListener {

    private final ContradictedDecisions contradicted;

    LateChangeListener(ContradictedDecisions contradicted) {
        this.contradicted = contradicted;
    }

    @EventListener
    @Transactional(propagation = Propagation.MANDATORY)
    public void found(CaseDifference difference) {
        if (difference.touchesDecided()) {
            contradicted.note(difference.key(), difference.because());
        }
    }
}
