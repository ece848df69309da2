package org.proviso.core.adjudication.questions;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.proviso.core.adjudication.facts.BallotFact;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.LateExcuseFact;
import org.proviso.core.adjudication.facts.OfficialErrorFact;
import org.proviso.core.adjudication.facts.PlaceFact;
import org.proviso.core.adjudication.finding.FactReader;
import org.proviso.core.rules.Reason;
import org.proviso.core.rules.Rule;

/** Was the ballot of a style the voter may vote? Moving is not a fault; casting another style is. An official's noted error and the voter's own location may change what follows. */
final class RightStyle extends OneFactQuestion<BallotFact> {

    RightStyle() {
        super("ballot.style", QuestionHeading.BALLOT, "Was it the right ballot style?", Fact.BALLOT);
    }

    @Override
    public Set<Fact<?>> reads() {
        return Set.of(Fact.BALLOT, Fact.PLACE, Fact.OFFICIAL_ERROR, Fact.LATE_EXCUSE);
    }

    @Override
    Answer answerFor(BallotFact word, FactReader facts, QuestionContext setting) {
        if (word == BallotFact.RIGHT_STYLE) {
            return setting.clear("Yes");
        }
        OfficialErrorFact error = facts.one(Fact.OFFICIAL_ERROR);
        if (error == OfficialErrorFact.NOTED) {
            return setting.defect(Reason.WRONG_STYLE_BY_OFFICIAL);
        }
        PlaceFact place = facts.one(Fact.PLACE);
        LateExcuseFact excuse =
                isTold(Reason.WRONG_STYLE_EXCUSED, setting) ? facts.one(Fact.LATE_EXCUSE) : LateExcuseFact.NOT_SWORN;
        return error == null || place == null || excuse == null
                ? sameEitherWay(setting)
                : setting.defect(way(place, excuse, setting));
    }

    private static Reason way(PlaceFact place, LateExcuseFact excuse, QuestionContext setting) {
        if (excuse == LateExcuseFact.SWORN) {
            return Reason.WRONG_STYLE_EXCUSED;
        }
        return switch (place) {
            case OWN_PLACE -> Reason.WRONG_STYLE_RIGHT_PLACE;
            case OTHER_PLACE -> Reason.WRONG_STYLE;
            case OTHER_DISTRICT ->
                isTold(Reason.WRONG_STYLE_OTHER_DISTRICT, setting)
                        ? Reason.WRONG_STYLE_OTHER_DISTRICT
                        : Reason.WRONG_STYLE;
        };
    }

    /** Where the law treats every way alike, it does not matter which one it was, if each is known as firmly. */
    private static Answer sameEitherWay(QuestionContext setting) {
        List<Reason> ways = ways(setting);
        boolean alike =
                ways.stream().map(setting.pack()::consequence).distinct().count() == 1;
        return alike
                ? setting.defect(leastFirm(ways, setting))
                : setting.open("how the voter got another style is not known yet");
    }

    /** The ways that the law of this state tells apart. */
    private static List<Reason> ways(QuestionContext setting) {
        return Stream.of(
                        Reason.WRONG_STYLE,
                        Reason.WRONG_STYLE_RIGHT_PLACE,
                        Reason.WRONG_STYLE_BY_OFFICIAL,
                        Reason.WRONG_STYLE_OTHER_DISTRICT,
                        Reason.WRONG_STYLE_EXCUSED)
                .filter(way -> !way.isRefinement() || isTold(way, setting))
                .toList();
    }

    private static boolean isTold(Reason refinement, QuestionContext setting) {
        return !setting.pack().of(Rule.consequence(refinement)).isAbsent();
    }

    private static Reason leastFirm(List<Reason> ways, QuestionContext setting) {
        return ways.stream()
                .filter(way -> !setting.pack().of(Rule.consequence(way)).isFirm())
                .findFirst()
                .orElse(Reason.WRONG_STYLE);
    }
}
