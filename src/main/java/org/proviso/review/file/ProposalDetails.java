package org.proviso.review.file;

import java.time.LocalDateTime;
import java.util.Optional;
import org.proviso.review.Proposal;

/** The newest proposal with its proposer's name, when it was made (county time), and the second reviewer's answer. */
public record ProposalDetails(
        Proposal proposal, String by, LocalDateTime at, boolean yours, Optional<SecondReview> second) {

    /** Agreed, or sent back with a note. */
    public record SecondReview(String by, boolean agrees, String note) {}
}
