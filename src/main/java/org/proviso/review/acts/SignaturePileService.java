package org.proviso.review.acts;

import jakarta.validation.Valid;
import org.proviso.core.act.ActResult;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.facts.SignatureComparison;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.transaction.interceptor.TransactionAspectSupport;
import org.springframework.validation.annotation.Validated;

/** Signatures compared one after another, of cases that nobody has. */
@Service
@Validated
public class SignaturePileService {

    private final CaseAssignmentService assignments;
    private final AnswerService answers;

    SignaturePileService(CaseAssignmentService assignments, AnswerService answers) {
        this.assignments = assignments;
        this.answers = answers;
    }

    /**
     * A first comparison needs the case: it is taken for it and given back to the queue. All three are recorded, or none,
     * so no case stays with somebody who only saw its signature.
     */
    @Transactional
    public ActResult<EnvelopeCase> takeCompareAndGiveBack(@Valid SignatureComparison look) {
        ActResult<EnvelopeCase> back = assignments
                .take(look.key(), look.version())
                .then(taken -> answers.recordSignatureComparison(
                        new SignatureComparison(look.key(), taken.version(), look.seen(), look.note())))
                .then(seen -> assignments.giveBack(seen.key(), seen.version()));
        if (back.isRefused()) {
            TransactionAspectSupport.currentTransactionStatus().setRollbackOnly();
        }
        return back;
    }
}
