package org.proviso.review.file;

import java.time.LocalDateTime;
import java.util.Optional;
import org.proviso.review.Proposal;

/** The newest proposal with its proposer by name, when it was made (county's clock), and the second reader's word. */
public record ProposalDetails(
        Proposal proposal, String by, LocalDateTime at, boolean yours, Optional<SecondReview> second) {

    /** Agreed, or sent back with a note. */
    public record SecondReview(String by, boolean agrees, String note) {}
}
