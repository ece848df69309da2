package org.proviso.review.mail;

import java.util.List;
import org.proviso.core.Code;

/** What the mail-ballot desk says of one line. */
public enum DeskAnswer implements Code {
    REFUSED("refused, not counted"),
    COUNTED("already counted"),
    NOT_SEEN("not seen"),
    TAKEN_OFF("taken off the list");

    private final String words;

    DeskAnswer(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    /** The answers that a line of this kind may have, the usual one first. */
    public static List<DeskAnswer> to(MailLine.Kind kind) {
        return kind == MailLine.Kind.REFUSE
                ? List.of(REFUSED, COUNTED, NOT_SEEN)
                : List.of(TAKEN_OFF, REFUSED, COUNTED);
    }
}
