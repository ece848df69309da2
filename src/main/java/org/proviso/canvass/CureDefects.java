package org.proviso.canvass;

import java.util.EnumSet;
import java.util.Set;
import org.proviso.review.CaseChanged;
import org.proviso.review.CaseState;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** Remembers, apart from the room of notices, in which envelopes the rules found something the voter may still bring. */
@Component
class CureDefects {

    private static final Set<CaseState> OVER =
            EnumSet.of(CaseState.DECIDED, CaseState.RELEASED, CaseState.SENT_ON, CaseState.ENDED);

    private final FigureStore figures;

    CureDefects(FigureStore figures) {
        this.figures = figures;
    }

    @EventListener
    @Transactional(propagation = Propagation.MANDATORY)
    public void caseChanged(CaseChanged news) {
        if (!news.report().asks().isEmpty() && !OVER.contains(news.state())) {
            figures.addCureDefect(news.key().electionId(), news.key().envelopeNo());
        }
    }
}
