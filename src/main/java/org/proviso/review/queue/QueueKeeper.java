package org.proviso.review.queue;

import org.proviso.review.CaseChanged;
import org.proviso.review.news.CaseDifference;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** Keeps each case at its place in the queue, in the transaction in which the rules said something new about it. */
@Component
class QueueKeeper {

    private final QueueStore queue;

    QueueKeeper(QueueStore queue) {
        this.queue = queue;
    }

    @EventListener
    @Transactional(propagation = Propagation.MANDATORY)
    public void place(CaseChanged changed) {
        queue.place(
                changed.report().envelope(),
                changed.key().electionId(),
                QueuePlace.of(changed.report()),
                changed.report().outlook().outcome().recommendation());
    }

    @EventListener
    @Transactional(propagation = Propagation.MANDATORY)
    public void bringForward(CaseDifference difference) {
        queue.changed(difference.key());
    }
}
