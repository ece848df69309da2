package org.proviso.review.news;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import org.proviso.core.BetweenRooms;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.rules.Ask;
import org.proviso.ledger.Actor;
import org.proviso.review.CaseActSteps;
import org.proviso.review.facts.NoticeSentStore;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** Takes word from the room of notices that a voter was told what may still be brought: a case may rest on it. */
@Service
@BetweenRooms
public class NoticeSentService {

    private final NoticeSentStore told;
    private final CaseRecheck watch;
    private final CaseActSteps desk;

    NoticeSentService(NoticeSentStore told, CaseRecheck watch, CaseActSteps desk) {
        this.told = told;
        this.watch = watch;
        this.desk = desk;
    }

    /** Holds a case for this transaction, so that nobody moves it while a notice about it is logged. */
    @Transactional(propagation = Propagation.MANDATORY)
    public void hold(EnvelopeKey key) {
        desk.lock(key);
    }

    /** The voter was told at that moment, local to the county; before the caller records itself in the ledger. */
    @Transactional(propagation = Propagation.MANDATORY)
    public List<CaseDifference> recordNoticeSent(EnvelopeKey key, Ask ask, LocalDateTime sentAt, Actor by) {
        desk.lock(key);
        told.insert(key, ask, sentAt);
        return watch.lookAgain(List.of(key), by, Map.of(key, List.of("The voter was told to " + ask.words() + ".")));
    }

    /** That the voter was told at that moment was logged by mistake; before the caller records itself in the ledger. */
    @Transactional(propagation = Propagation.MANDATORY)
    public List<CaseDifference> takeBackNoticeSent(EnvelopeKey key, Ask ask, LocalDateTime sentAt, Actor by) {
        desk.lock(key);
        told.takeBack(key, ask, sentAt);
        return watch.lookAgain(
                List.of(key), by, Map.of(key, List.of("A notice to " + ask.words() + " was logged by mistake.")));
    }
}
