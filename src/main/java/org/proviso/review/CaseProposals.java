package org.proviso.review;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import org.proviso.core.BetweenRooms;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** What reviewers proposed to the decider, for the room that decides. */
@Component
@BetweenRooms
public class CaseProposals {

    private final ProposalStore proposals;

    CaseProposals(ProposalStore proposals) {
        this.proposals = proposals;
    }

    /** The newest proposals of several envelopes with who read them again, by envelope number. */
    @Transactional(readOnly = true)
    public Map<EnvelopeNumber, ReadProposal> newest(ElectionId electionId, Collection<EnvelopeNumber> envelopeNos) {
        return proposals.newest(electionId, envelopeNos);
    }

    /** Every case of an election that waits for the decider, with what is proposed, by envelope number. */
    @Transactional(readOnly = true)
    public List<ReadyCase> ready(ElectionId electionId) {
        return proposals.ready(electionId);
    }
}
