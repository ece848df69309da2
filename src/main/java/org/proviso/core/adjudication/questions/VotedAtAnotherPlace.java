package org.proviso.core.adjudication.questions;

import org.proviso.core.adjudication.facts.CheckInFact;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.finding.FactReader;
import org.proviso.core.rules.Reason;

/** Did the voter vote in person elsewhere? A check-in is a clerk's tick; only the signature in the poll book tells. */
final class VotedAtAnotherPlace extends OneFactQuestion<CheckInFact> {

    VotedAtAnotherPlace() {
        super(
                "already_voted.check_in",
                QuestionHeading.ALREADY_VOTED,
                "Did the voter vote at another location?",
                Fact.CHECK_IN);
    }

    @Override
    Answer answerFor(CheckInFact word, FactReader facts, QuestionContext setting) {
        return switch (word) {
            case NONE -> setting.clear("No check-in with a ballot issued");
            case NOT_THEIRS -> setting.clear("No; the poll book shows another person");
            case VOTED -> setting.defect(Reason.VOTED_IN_PERSON);
            case ELSEWHERE_UNSEEN ->
                setting.open(
                        "a ballot was issued at a check-in elsewhere; a reviewer must check the poll-book signature");
        };
    }
}
