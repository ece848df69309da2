package org.proviso.core.adjudication.questions;

import org.proviso.core.adjudication.facts.CheckInFact;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.finding.FactReader;
import org.proviso.core.rules.Reason;

/** Did the voter vote in person elsewhere? A check-in is a clerk's tick; only the signature in the poll book tells. */
final class VotedAtAnotherPlace extends OneFactQuestion<CheckInFact> {

    VotedAtAnotherPlace() {
        super("already_voted.check_in", QuestionHeading.ALREADY_VOTED, "Voted at another location?", Fact.CHECK_IN);
    }

    @Override
    Answer answerFor(CheckInFact word, FactReader facts, QuestionContext setting) {
        return switch (word) {
            case NONE -> setting.clear("No check-in with a ballot");
            case NOT_THEIRS -> setting.clear("No; the poll book shows somebody else");
            case VOTED -> setting.defect(Reason.VOTED_IN_PERSON);
            case ELSEWHERE_UNSEEN ->
                setting.open("a check-in elsewhere gave a ballot; a person must look at the poll-book signature");
        };
    }
}
