package org.proviso.core.adjudication.questions;

import org.proviso.core.adjudication.Answer;
import org.proviso.core.adjudication.FactReader;
import org.proviso.core.adjudication.Heading;
import org.proviso.core.adjudication.Setting;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.OtherCounty;
import org.proviso.core.rules.Reason;

/** Did the voter vote in another county? A line of the state's list is a resemblance until a person confirms it. */
final class VotedInAnotherCounty extends Asked<OtherCounty> {

    VotedInAnotherCounty() {
        super(
                "already_voted.other_county",
                Heading.ALREADY_VOTED,
                "Did the voter vote in another county?",
                Fact.OTHER_COUNTY);
    }

    @Override
    Answer of(OtherCounty word, FactReader facts, Setting setting) {
        return switch (word) {
            case NOT_LISTED -> setting.clear("Not on the state's list");
            case NOT_THEIRS -> setting.clear("No; the entry is another person");
            case VOTED -> setting.stands(Reason.VOTED_IN_OTHER_COUNTY);
            case LISTED_IN_FULL ->
                setting.open(
                        "an entry on the state's list matches the voter in full; a reviewer must confirm it",
                        setting.stands(Reason.VOTED_IN_OTHER_COUNTY));
            case LISTED -> setting.open("an entry on the state's list resembles the voter; a reviewer must confirm it");
        };
    }
}
