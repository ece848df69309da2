package org.proviso.review.mail;

import java.time.Instant;
import java.util.List;

/** A list that was sent to the mail-ballot desk: its number, who sent it (full name) when, and its lines. */
public record MailList(int number, String sentBy, Instant sentAt, List<SentLine> lines) {

    /** How many lines the desk has not answered. */
    public int unanswered() {
        return (int) lines.stream().filter(line -> !line.isAnswered()).count();
    }
}
