package org.proviso.core.adjudication.kept;

import org.proviso.core.Code;
import org.proviso.core.adjudication.CaseReport;
import org.proviso.core.adjudication.finding.CaseFacts;
import org.proviso.core.adjudication.judging.Assessment;
import org.proviso.core.adjudication.questions.Setting;

/** The three ways in which a case is seen; only the settled one is ever a recommendation. */
public enum Way implements Code {
    SETTLED,
    PRESUMED,
    OUTLOOK;

    Assessment assess(CaseFacts facts, Setting setting) {
        return this == OUTLOOK ? Assessment.outlook(facts, setting) : Assessment.of(facts, setting);
    }

    Assessment of(CaseReport report) {
        return switch (this) {
            case SETTLED -> report.settled();
            case PRESUMED -> report.presumed();
            case OUTLOOK -> report.outlook();
        };
    }
}
