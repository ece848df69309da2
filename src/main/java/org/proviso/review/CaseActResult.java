package org.proviso.review;

import java.util.List;
import java.util.stream.Collectors;
import org.proviso.core.act.Refusal;

/** What became of an act on a case: it was recorded, or it is not legal now and nothing was written. */
public sealed interface CaseActResult {

    /** Recorded; the case as it is now. */
    record Accepted(EnvelopeCase now) implements CaseActResult {}

    /** Not legal now: every reason, the first one first. */
    record Refused(List<Refusal> why) implements CaseActResult {

        public static Refused because(Refusal refusal) {
            return new Refused(List.of(refusal));
        }

        /** All reasons as the person reads them. */
        public String words() {
            return why.stream().map(Refusal::words).collect(Collectors.joining(" "));
        }
    }
}
