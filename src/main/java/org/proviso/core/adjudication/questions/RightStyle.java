package org.proviso.core.adjudication.questions;

import java.util.List;
import java.util.Set;
import org.proviso.core.adjudication.Answer;
import org.proviso.core.adjudication.FactReader;
import org.proviso.core.adjudication.Heading;
import org.proviso.core.adjudication.Setting;
import org.proviso.core.adjudication.facts.BallotFact;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.OfficialError;
import org.proviso.core.adjudication.facts.PlaceFact;
import org.proviso.core.rules.Reason;
import org.proviso.core.rules.Rule;

/** Was the ballot of a style the voter may vote? Moving is not a fault; casting another style is. An official's noted error and the voter's own location may change what follows. */
final class RightStyle extends Asked<BallotFact> {

    private static final List<Reason> WAYS =
            List.of(Reason.WRONG_STYLE, Reason.WRONG_STYLE_RIGHT_PLACE, Reason.WRONG_STYLE_BY_OFFICIAL);

    RightStyle() {
        super("ballot.style", Heading.BALLOT, "Was the ballot of the right style?", Fact.BALLOT);
    }

    @Override
    public Set<Fact<?>> reads() {
        return Set.of(Fact.BALLOT, Fact.PLACE, Fact.OFFICIAL_ERROR);
    }

    @Override
    Answer of(BallotFact word, FactReader facts, Setting setting) {
        if (word == BallotFact.RIGHT_STYLE) {
            return setting.clear("Yes");
        }
        OfficialError error = facts.one(Fact.OFFICIAL_ERROR);
        if (error == OfficialError.NOTED) {
            return setting.stands(Reason.WRONG_STYLE_BY_OFFICIAL);
        }
        PlaceFact place = facts.one(Fact.PLACE);
        if (error == null || place == null) {
            return sameEitherWay(setting);
        }
        return setting.stands(place == PlaceFact.OWN_PLACE ? Reason.WRONG_STYLE_RIGHT_PLACE : Reason.WRONG_STYLE);
    }

    /** Where the law treats every way alike, nobody needs to know which it was, if each is known as firmly. */
    private static Answer sameEitherWay(Setting setting) {
        boolean alike =
                WAYS.stream().map(setting.pack()::consequence).distinct().count() == 1;
        return alike
                ? setting.stands(leastFirm(setting))
                : setting.open("how the voter came to another style is not known yet");
    }

    private static Reason leastFirm(Setting setting) {
        return WAYS.stream()
                .filter(way -> !setting.pack().of(Rule.consequence(way)).isFirm())
                .findFirst()
                .orElse(Reason.WRONG_STYLE);
    }
}
