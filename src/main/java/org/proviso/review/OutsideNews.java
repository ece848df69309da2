package org.proviso.review;

import java.util.List;
import java.util.Map;
import org.proviso.access.AccessService;
import org.proviso.intake.CureRecorded;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** Hears what other rooms recorded about an envelope, in their transaction, and looks at its case again. */
@Component
class OutsideNews {

    private final CaseWatch watch;
    private final AccessService access;

    OutsideNews(CaseWatch watch, AccessService access) {
        this.watch = watch;
        this.access = access;
    }

    /** The voter brought something. */
    @EventListener
    @Transactional(propagation = Propagation.MANDATORY)
    public void cureRecorded(CureRecorded news) {
        CaseKey key = new CaseKey(news.electionId(), news.envelopeNo());
        watch.lookAgain(
                List.of(key), access.signedIn().actor(), Map.of(key, List.of("The voter brought what was asked.")));
    }
}
