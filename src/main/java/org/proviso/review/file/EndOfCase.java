package org.proviso.review.file;

import java.time.LocalDateTime;
import java.util.Optional;
import org.proviso.review.ends.CountyReceipt;
import org.proviso.review.ends.EndProposal;

/** How a case is to end without a decision, or ended so: the newest proposal, and the other county's receipt that holds. */
public record EndOfCase(Optional<Proposed> proposed, Optional<CountyReceipt> receipt) {

    /** The proposal with its proposer's name, when it was made (county time), and who read it (empty while nobody did). */
    public record Proposed(EndProposal proposal, String by, LocalDateTime at, boolean yours, String readBy) {}

    /** The proposal that waits for a second person. */
    public Optional<Proposed> waits() {
        return proposed.filter(details -> details.proposal().state() == org.proviso.review.Proposal.State.STANDING);
    }

    /** What a person must know who takes an envelope back: that the other county has it; empty where it did not say so. */
    public Optional<String> receiptWords() {
        return receipt.map(CountyReceipt::words);
    }
}
