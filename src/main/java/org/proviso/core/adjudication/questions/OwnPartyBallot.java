package org.proviso.core.adjudication.questions;

import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.PartyBallotFact;
import org.proviso.core.adjudication.finding.FactReader;
import org.proviso.core.rules.Reason;

/** In a primary: is the party ballot one the voter may vote? */
final class OwnPartyBallot extends OneFactQuestion<PartyBallotFact> {

    OwnPartyBallot() {
        super("ballot.party", QuestionHeading.BALLOT, "Was it the right party's ballot?", Fact.PARTY_BALLOT);
    }

    @Override
    Answer answerFor(PartyBallotFact word, FactReader facts, QuestionContext setting) {
        return switch (word) {
            case NONE -> new Answer.NotAsked("no party ballot");
            case OWN -> setting.clear("Yes");
            case OTHER -> setting.defect(Reason.WRONG_PARTY_BALLOT);
        };
    }
}
