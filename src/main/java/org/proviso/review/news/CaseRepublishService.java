package org.proviso.review.news;

import java.util.List;
import org.proviso.core.BetweenRooms;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.intake.numbers.ReceiptCorrected;
import org.proviso.review.CaseActSteps;
import org.proviso.review.CaseStore;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.assess.AssessmentService;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** Tells the later rooms again how cases stand, for a room that makes its own table anew. Nothing of a case is written. */
@Service
@BetweenRooms
public class CaseRepublishService {

    private final AssessmentService assessments;
    private final CaseStore cases;
    private final CaseActSteps desk;

    CaseRepublishService(AssessmentService assessments, CaseStore cases, CaseActSteps desk) {
        this.assessments = assessments;
        this.cases = cases;
        this.desk = desk;
    }

    /** An envelope has another receipt number: what its voter reads is found by it. */
    @EventListener
    @Transactional(propagation = Propagation.MANDATORY)
    public void receiptCorrected(ReceiptCorrected news) {
        EnvelopeKey key = new EnvelopeKey(news.electionId(), news.envelopeNo());
        desk.lock(key);
        assessments.announceAnew(List.of(key));
    }

    /**
     * Announces every case of an election as it stands at this moment; how many there are. All cases are held first, so
     * that nobody moves one meanwhile, and what the caller has to clear is cleared once they are.
     */
    @Transactional(propagation = Propagation.MANDATORY)
    public int announceAll(ElectionId electionId, Runnable onceHeld) {
        List<EnvelopeKey> keys =
                cases.all(electionId).stream().map(EnvelopeCase::key).sorted().toList();
        keys.forEach(desk::lock);
        onceHeld.run();
        assessments.announceAnew(keys);
        return keys.size();
    }
}
