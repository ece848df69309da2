package org.proviso.core.adjudication.questions;

import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.OtherCountyFact;
import org.proviso.core.adjudication.finding.FactReader;
import org.proviso.core.rules.Reason;

/** Did the voter vote in another county? A line of the state's list is a resemblance until a person confirms it. */
final class VotedInAnotherCounty extends OneFactQuestion<OtherCountyFact> {

    VotedInAnotherCounty() {
        super(
                "already_voted.other_county",
                QuestionHeading.ALREADY_VOTED,
                "Did the voter vote in another county?",
                Fact.OTHER_COUNTY);
    }

    @Override
    Answer answerFor(OtherCountyFact word, FactReader facts, QuestionContext setting) {
        return switch (word) {
            case NOT_LISTED -> setting.clear("Not on the state's list");
            case NOT_THEIRS -> setting.clear("No; the entry is another person");
            case VOTED -> setting.defect(Reason.VOTED_IN_OTHER_COUNTY);
            case LISTED_IN_FULL ->
                setting.open(
                        "an entry on the state's list matches the voter in full; a reviewer must confirm it",
                        setting.defect(Reason.VOTED_IN_OTHER_COUNTY));
            case LISTED -> setting.open("an entry on the state's list resembles the voter; a reviewer must confirm it");
        };
    }
}
