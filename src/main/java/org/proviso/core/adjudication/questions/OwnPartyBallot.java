package org.proviso.core.adjudication.questions;

import org.proviso.core.adjudication.Answer;
import org.proviso.core.adjudication.FactReader;
import org.proviso.core.adjudication.Heading;
import org.proviso.core.adjudication.Setting;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.PartyBallot;
import org.proviso.core.rules.Reason;

/** In a primary: is the party ballot one the voter may vote? */
final class OwnPartyBallot extends Asked<PartyBallot> {

    OwnPartyBallot() {
        super("ballot.party", Heading.BALLOT, "Was it the right party's ballot?", Fact.PARTY_BALLOT);
    }

    @Override
    Answer of(PartyBallot word, FactReader facts, Setting setting) {
        return switch (word) {
            case NONE -> new Answer.NotAsked("no party ballot");
            case OWN -> setting.clear("Yes");
            case OTHER -> setting.stands(Reason.WRONG_PARTY_BALLOT);
        };
    }
}
