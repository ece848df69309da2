package org.proviso.release;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.review.CaseService;
import org.proviso.review.CaseState;
import org.proviso.review.Decision;
import org.proviso.review.decide.DecisionService;
import org.springframework.stereotype.Component;

/** Finds the envelopes that are decided to count, that no batch has yet and that no court keeps closed. */
@Component
class EnvelopesToOpen {

    private final BatchStore batches;
    private final ReleaseChecks checks;
    private final DecisionService decisions;
    private final CaseService cases;

    EnvelopesToOpen(BatchStore batches, ReleaseChecks checks, DecisionService decisions, CaseService cases) {
        this.batches = batches;
        this.checks = checks;
        this.decisions = decisions;
        this.cases = cases;
    }

    /** By envelope number. */
    List<EnvelopeToOpen> of(ElectionId electionId) {
        Map<EnvelopeNumber, Decision> decided = decisions.standing(electionId);
        Set<EnvelopeNumber> taken = batches.inBatches(electionId);
        taken.addAll(checks.keptClosed(electionId));
        return cases.inState(electionId, CaseState.DECIDED).stream()
                .filter(envelopeCase -> envelopeCase.countedPerson() != null
                        && !taken.contains(envelopeCase.key().envelopeNo()))
                .map(envelopeCase -> new EnvelopeToOpen(
                        envelopeCase.key(),
                        Objects.requireNonNull(
                                decided.get(envelopeCase.key().envelopeNo()),
                                "a case that is decided has its decision")))
                .toList();
    }
}
