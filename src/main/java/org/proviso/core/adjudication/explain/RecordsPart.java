package org.proviso.core.adjudication.explain;

import java.util.LinkedHashSet;
import java.util.Set;
import org.proviso.core.adjudication.CaseReport;
import org.proviso.core.adjudication.finding.Evidence;
import org.proviso.core.adjudication.finding.Source;
import org.proviso.core.adjudication.judging.Answered;

/** What the other records say of the voter: mail ballots, poll books, the state's list, other envelopes. */
final class RecordsPart {

    private static final Set<Source> SHOWN =
            Set.of(Source.MAIL_BALLOT_RECORD, Source.POLL_BOOK, Source.STATE_LIST, Source.OTHER_ENVELOPES, Source.CURE);

    private RecordsPart() {}

    static void write(CaseReport report, Page page) {
        Set<String> lines = new LinkedHashSet<>();
        for (Answered one : report.presumed().answered()) {
            for (Evidence evidence : one.evidence()) {
                if (SHOWN.contains(evidence.source())) {
                    lines.add(evidence.words());
                }
            }
        }
        lines.forEach(line -> page.wrapped("  - ", line));
    }
}
