package org.proviso.core.adjudication.questions;

import org.proviso.core.adjudication.Answer;
import org.proviso.core.adjudication.FactReader;
import org.proviso.core.adjudication.Heading;
import org.proviso.core.adjudication.Setting;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.VoteTime;
import org.proviso.core.rules.Reason;
import org.proviso.core.rules.Rules;

/** Was the ballot cast in the hours of the polls? Ballots of court-extended hours are provisional and held apart (52 USC 21082(c)). */
final class CastInHours extends Asked<VoteTime> {

    CastInHours() {
        super("anything_else.hours", Heading.ANYTHING_ELSE, "Was it cast during voting hours?", Fact.VOTE_TIME);
    }

    @Override
    Answer of(VoteTime word, FactReader facts, Setting setting) {
        return switch (word) {
            case WITHIN_HOURS -> setting.clear("Yes");
            case IN_LINE_AT_CLOSE -> setting.clear("Yes; in line when polls closed");
            case EXTENDED_IN_FORCE, EXTENDED_FINAL ->
                setting.clear("In hours extended by a court; held apart", Rules.EXTENDED_HELD_APART);
            case EXTENDED_PENDING -> pending(setting);
            case EXTENDED_SET_ASIDE -> setting.stands(Reason.EXTENSION_SET_ASIDE);
            case AFTER_CLOSE -> setting.stands(Reason.CAST_AFTER_CLOSE);
        };
    }

    private static Answer pending(Setting setting) {
        return switch (setting.pack().word(Rules.EXTENDED_PENDING)) {
            case "count_apart" ->
                setting.clear("In hours extended by a court; counted apart while in dispute", Rules.EXTENDED_PENDING);
            case "wait" -> setting.open("the order extending the hours is still in dispute", Rules.EXTENDED_PENDING);
            default -> setting.ruleUnknown(Rules.EXTENDED_PENDING);
        };
    }
}
