package org.proviso.core.adjudication.kept;

import org.proviso.core.Code;
import org.proviso.core.adjudication.CaseReport;
import org.proviso.core.adjudication.finding.CaseFacts;
import org.proviso.core.adjudication.judging.Assessment;
import org.proviso.core.adjudication.questions.QuestionContext;

/** The three ways in which a case is seen; only the settled one is ever a recommendation. */
public enum AssessmentKind implements Code {
    SETTLED,
    PRESUMED,
    OUTLOOK;

    Assessment assess(CaseFacts facts, QuestionContext setting) {
        return this == OUTLOOK ? Assessment.outlook(facts, setting) : Assessment.assess(facts, setting);
    }

    Assessment of(CaseReport report) {
        return switch (this) {
            case SETTLED -> report.settled();
            case PRESUMED -> report.presumed();
            case OUTLOOK -> report.outlook();
        };
    }
}
