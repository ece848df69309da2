package org.proviso.review.assess;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.proviso.core.BetweenRooms;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.adjudication.judging.DueAsk;
import org.proviso.core.rules.Ask;
import org.proviso.intake.cure.CaseAfterCure;
import org.proviso.review.facts.NoticeSentStore;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** Tells the page of cure evidence what the case says now: the asks that still run, and since when the voter knows. */
@Component
@BetweenRooms
class CaseAfterCureReader implements CaseAfterCure {

    private final AssessmentService assessments;
    private final NoticeSentStore told;

    CaseAfterCureReader(AssessmentService assessments, NoticeSentStore told) {
        this.assessments = assessments;
        this.told = told;
    }

    @Override
    @Transactional(readOnly = true)
    public Optional<LocalDateTime> told(EnvelopeKey key, Ask ask) {
        return Optional.ofNullable(told.first(key.electionId(), Set.of(key.envelopeNo()))
                .getOrDefault(key.envelopeNo(), Map.of())
                .get(ask));
    }

    @Override
    @Transactional(readOnly = true)
    public List<DueAsk> owed(EnvelopeKey key) {
        return assessments.now(key).asks();
    }
}
