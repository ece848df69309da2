package org.proviso.board;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.proviso.core.Code;
import org.proviso.core.rules.Reason;
import org.proviso.review.CaseKey;
import org.proviso.review.Proposal;
import org.proviso.review.acts.ProposalService;
import org.springframework.stereotype.Component;

/** Finds the proposal that a case came before the decider with. */
@Component
public class ProposalsForDecision {

    private final ProposalService proposals;

    ProposalsForDecision(ProposalService proposals) {
        this.proposals = proposals;
    }

    /** The newest, unless it was returned or withdrawn. */
    public Optional<ProposalForDecision> find(CaseKey key) {
        return proposals
                .newest(key)
                .filter(found -> found.state() == Proposal.State.STANDING || found.state() == Proposal.State.AGREED)
                .map(this::proposed);
    }

    private ProposalForDecision proposed(Proposal found) {
        return new ProposalForDecision(
                found.as(),
                found.grounds().reasons(),
                found.grounds().legalReference(),
                found.grounds().departsBecause(),
                found.proposedBy(),
                proposals.agreedBy(found).orElse(null));
    }

    /** A list of codes as a column holds it. */
    static List<Reason> reasons(String codes) {
        return Stream.of(codes.split(";"))
                .flatMap(code -> Code.find(Reason.class, code).stream())
                .toList();
    }
}
