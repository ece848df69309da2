package org.proviso.core.adjudication.questions;

import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.VoteTimeFact;
import org.proviso.core.adjudication.finding.FactReader;
import org.proviso.core.rules.Reason;
import org.proviso.core.rules.Rules;

/** Was the ballot cast in the hours of the polls? Ballots of court-extended hours are provisional and held apart (52 USC 21082(c)). */
final class CastInHours extends OneFactQuestion<VoteTimeFact> {

    CastInHours() {
        super("anything_else.hours", QuestionHeading.ANYTHING_ELSE, "Was it cast during voting hours?", Fact.VOTE_TIME);
    }

    @Override
    Answer answerFor(VoteTimeFact word, FactReader facts, QuestionContext setting) {
        return switch (word) {
            case WITHIN_HOURS -> setting.clear("Yes");
            case IN_LINE_AT_CLOSE -> setting.clear("Yes; in line when polls closed");
            case EXTENDED_IN_FORCE, EXTENDED_FINAL ->
                setting.clear("In hours extended by a court; held apart", Rules.EXTENDED_HELD_APART);
            case EXTENDED_PENDING -> pending(setting);
            case EXTENDED_SET_ASIDE -> setting.defect(Reason.EXTENSION_SET_ASIDE);
            case AFTER_CLOSE -> setting.defect(Reason.CAST_AFTER_CLOSE);
        };
    }

    private static Answer pending(QuestionContext setting) {
        return switch (setting.pack().word(Rules.EXTENDED_PENDING)) {
            case "count_apart" ->
                setting.clear("In hours extended by a court; counted apart while in dispute", Rules.EXTENDED_PENDING);
            case "wait" -> setting.open("the order extending the hours is still in dispute", Rules.EXTENDED_PENDING);
            default -> setting.ruleUnknown(Rules.EXTENDED_PENDING);
        };
    }
}
