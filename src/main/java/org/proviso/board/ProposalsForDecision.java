package org.proviso.board;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.review.CaseProposals;
import org.proviso.review.Proposal;
import org.proviso.review.ReadProposal;
import org.springframework.stereotype.Component;

/** Finds the proposal that a case came before the decider with. */
@Component
public class ProposalsForDecision {

    private final CaseProposals proposals;

    ProposalsForDecision(CaseProposals proposals) {
        this.proposals = proposals;
    }

    /** The newest, unless it was returned or withdrawn. */
    public Optional<ProposalForDecision> find(EnvelopeKey key) {
        return Optional.ofNullable(
                find(key.electionId(), List.of(key.envelopeNo())).get(key.envelopeNo()));
    }

    /** The same of several cases, by envelope number; one without such a proposal is not in it. */
    public Map<EnvelopeNumber, ProposalForDecision> find(
            ElectionId electionId, Collection<EnvelopeNumber> envelopeNos) {
        Map<EnvelopeNumber, ProposalForDecision> proposed = new HashMap<>();
        proposals.newest(electionId, envelopeNos).forEach((number, read) -> {
            Proposal.State state = read.proposal().state();
            if (state == Proposal.State.STANDING || state == Proposal.State.AGREED) {
                proposed.put(number, proposed(read));
            }
        });
        return proposed;
    }

    private static ProposalForDecision proposed(ReadProposal read) {
        Proposal found = read.proposal();
        return new ProposalForDecision(
                found.as(),
                found.grounds().reasons(),
                found.grounds().legalReference(),
                found.grounds().departsBecause(),
                found.proposedBy(),
                read.secondReadBy());
    }
}
