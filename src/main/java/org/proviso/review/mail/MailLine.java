package org.proviso.review.mail;

import org.proviso.core.Code;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.VoterId;

/**
 * One line for the mail-ballot desk: the envelope and the decision by which it counts, the voter with the receipt number
 * (empty for none), and the voter's mail ballots as loaded.
 */
public record MailLine(
        EnvelopeKey key, Kind kind, int decision, VoterId voterId, String voterName, String receiptNo, String ballots) {

    /** What the desk is told. */
    public enum Kind implements Code {
        REFUSE("refuse the mail ballot"),
        WITHDRAWN("withdrawn: do not refuse for this envelope");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** The same voter's line, taken back. */
    MailLine withdrawn() {
        return new MailLine(key, Kind.WITHDRAWN, decision, voterId, voterName, receiptNo, ballots);
    }
}
