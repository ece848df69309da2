package org.proviso.core.adjudication.questions;

import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.VoterIdentityFact;
import org.proviso.core.adjudication.finding.FactReader;

/** Who is this voter? Only a person confirms a link, however sure the match. */
final class VoterIdentified extends OneFactQuestion<VoterIdentityFact> {

    /** What is to be done when the file has no record that fits. */
    static final String NOT_IN_FILE =
            "no record matches; search cancelled, pending, agency and other-county records and"
                    + " former names, and enter the result";

    VoterIdentified() {
        super("voter.identity", QuestionHeading.VOTER, "Who is this voter?", Fact.IDENTITY);
    }

    @Override
    Answer answerFor(VoterIdentityFact word, FactReader facts, QuestionContext setting) {
        return switch (word) {
            case CONFIRMED -> setting.clear("Linked by a reviewer");
            case NOT_ON_ROLL -> setting.clear("Not on the roll, by a completed search");
            case PRESUMED ->
                setting.open("the link has not been confirmed yet", setting.clear("the record shown above"));
            case ONE_FITS_WELL -> setting.open("one record is a likely match, but not certain; a reviewer must check");
            case SEVERAL_FIT -> setting.open("one or more records may be this voter; a reviewer must check");
            case NONE_FITS -> setting.open(NOT_IN_FILE, setting.clear("No one on the roll"));
        };
    }
}
