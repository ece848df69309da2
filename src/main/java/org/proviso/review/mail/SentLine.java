package org.proviso.review.mail;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.proviso.core.UserName;

/** A line as it was sent: on which list, who sent it when, and the desk's answer (null while there is none). */
public record SentLine(
        int listNo,
        int lineNo,
        MailLine line,
        UserName sentBy,
        Instant sentAt,
        @Nullable GivenAnswer given) {

    /** Whether the desk has answered it. */
    public boolean isAnswered() {
        return given != null;
    }

    /** Whether it asks to refuse this voter's mail ballot because of this decision. */
    boolean asks(MailLine wanted) {
        return line.kind() == MailLine.Kind.REFUSE
                && line.decision() == wanted.decision()
                && line.voterId().equals(wanted.voterId());
    }

    int seenAnswer() {
        return given == null ? 0 : given.number();
    }
}
