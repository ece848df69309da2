package org.proviso.core.adjudication.explain;

import java.util.LinkedHashSet;
import java.util.Set;
import org.proviso.core.adjudication.CaseReport;
import org.proviso.core.adjudication.finding.Evidence;
import org.proviso.core.adjudication.finding.EvidenceSource;
import org.proviso.core.adjudication.judging.AnsweredQuestion;

/** What the other records say of the voter: mail ballots, poll books, the state's list, other envelopes. */
final class RecordsSection {

    private static final Set<EvidenceSource> SHOWN = Set.of(
            EvidenceSource.MAIL_BALLOT_RECORD,
            EvidenceSource.POLL_BOOK,
            EvidenceSource.STATE_LIST,
            EvidenceSource.OTHER_ENVELOPES,
            EvidenceSource.CURE);

    private RecordsSection() {}

    static void write(CaseReport report, TextPage page) {
        Set<String> lines = new LinkedHashSet<>();
        for (AnsweredQuestion answeredQuestion : report.presumed().answered()) {
            for (Evidence evidence : answeredQuestion.evidence()) {
                if (SHOWN.contains(evidence.source())) {
                    lines.add(evidence.words());
                }
            }
        }
        lines.forEach(line -> page.wrapped("  - ", line));
    }
}
