package org.proviso.notices.ui;

import java.util.Objects;
import org.proviso.notices.Notice;
import org.proviso.notices.NoticeKind;

/** What a notice is about, in words. */
final class NoticeWords {

    private NoticeWords() {}

    static String about(Notice notice) {
        return notice.kind() == NoticeKind.ASK
                ? "The voter may " + Objects.requireNonNull(notice.ask()).words() + "."
                : "The decision and the reasons.";
    }
}
