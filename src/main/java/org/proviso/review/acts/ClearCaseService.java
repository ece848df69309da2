package org.proviso.review.acts;

import jakarta.validation.Valid;
import java.util.List;
import org.proviso.core.act.ActResult;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.ProposeOutcome;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.transaction.interceptor.TransactionAspectSupport;
import org.springframework.validation.annotation.Validated;

/**
 * The one act that settles the review of a clear case: the voter whom the match is sure of is confirmed, and the ballot is
 * proposed to be counted. Two acts in the ledger, both or neither.
 */
@Service
@Validated
public class ClearCaseService {

    private final LinkService links;
    private final ProposalService proposals;

    ClearCaseService(LinkService links, ProposalService proposals) {
        this.links = links;
        this.proposals = proposals;
    }

    /** Where the proposal is refused the link is not confirmed either: nothing was recorded. */
    @Transactional
    public ActResult<EnvelopeCase> confirmAndPropose(@Valid ConfirmLink command) {
        ActResult<EnvelopeCase> proposed = links.confirm(command)
                .then(now -> proposals.propose(
                        new ProposeOutcome(command.key(), now.version(), DecisionOutcome.COUNT, List.of(), "", "")));
        if (proposed.isRefused()) {
            TransactionAspectSupport.currentTransactionStatus().setRollbackOnly();
        }
        return proposed;
    }
}
