package org.proviso.review.decide;

import java.time.Instant;
import java.util.List;
import org.proviso.core.BetweenRooms;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;
import org.proviso.review.facts.CaseReturn;
import org.proviso.review.facts.CaseReturnStore;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Cases that a decider sent back to the reviewers, undecided, for the record of a session. */
@BetweenRooms
@Service
public class SentBackCases {

    private final CaseReturnStore returns;

    SentBackCases(CaseReturnStore returns) {
        this.returns = returns;
    }

    /** One that was sent back: by whom, when (UTC), and what the reviewers should check. */
    public record SentBack(EnvelopeNumber envelopeNo, UserName by, Instant at, String note) {}

    /** All of an election, in the order in which they were sent back. */
    @Transactional(readOnly = true)
    public List<SentBack> of(ElectionId electionId) {
        return returns.all(electionId, CaseReturn.Kind.SENT_BACK).stream()
                .filter(back -> back.returnedBy() != null)
                .map(back -> new SentBack(back.envelopeNo(), back.returnedBy(), back.returnedAt(), back.because()))
                .toList();
    }
}
