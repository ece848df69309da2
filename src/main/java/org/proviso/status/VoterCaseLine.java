package org.proviso.status;

import java.time.Instant;
import java.util.List;
import org.proviso.core.adjudication.CaseReport;
import org.proviso.core.adjudication.facts.VoterIdentityFact;
import org.proviso.core.adjudication.judging.AnsweredQuestion;
import org.proviso.core.adjudication.judging.DueAsk;
import org.proviso.core.adjudication.questions.Answer;
import org.proviso.core.adjudication.questions.QuestionHeading;
import org.proviso.core.calendar.Deadline;
import org.proviso.core.rules.Reason;
import org.proviso.review.CaseChanged;
import org.proviso.review.CaseState;
import org.proviso.review.Decision;

/**
 * What a voter may know of a case: the state, reasons once it is decided, and while it is not, whether the registration
 * was found and what to bring by when.
 */
record VoterCaseLine(
        VoterCaseState state, List<Reason> reasons, List<VoterAsk> asks, boolean registrationFound, Instant since) {

    /** {@code now}: since when it reads so, where the case is not decided. */
    static VoterCaseLine of(CaseChanged news, Instant now) {
        return switch (news.state()) {
            case RECEIVED, OPEN, IN_REVIEW, PROPOSED, READY -> undecided(news, now);
            case DECIDED, RELEASED ->
                news.decision().map(VoterCaseLine::decided).orElseGet(() -> plain(VoterCaseState.UNDER_REVIEW, now));
            case SENT_ON -> plain(VoterCaseState.SENT_ON, now);
            case ENDED -> plain(VoterCaseState.NOT_VOTED, now);
        };
    }

    /** No word of who has the case or what is proposed: moving between reviewers changes nothing here. */
    private static VoterCaseLine undecided(CaseChanged news, Instant now) {
        List<VoterAsk> asks =
                news.report().asks().stream().map(VoterCaseLine::ask).toList();
        VoterCaseState without =
                news.state() == CaseState.RECEIVED ? VoterCaseState.RECEIVED : VoterCaseState.UNDER_REVIEW;
        VoterCaseState state = asks.isEmpty() ? without : VoterCaseState.WAITS_FOR_YOU;
        return new VoterCaseLine(state, List.of(), asks, registrationFound(news.report()), now);
    }

    private static VoterAsk ask(DueAsk due) {
        return new VoterAsk(due.ask(), due.deadline().map(Deadline::lastMoment).orElse(null));
    }

    /**
     * Only what speaks for the voter is told before a decision: a person confirmed whose record it is, and the record
     * answers the question in full.
     */
    private static boolean registrationFound(CaseReport report) {
        List<Answer> answers = report.settled().answered().stream()
                .filter(answeredQuestion -> answeredQuestion.question().heading() == QuestionHeading.REGISTRATION)
                .map(AnsweredQuestion::answer)
                .toList();
        return report.link().identity() == VoterIdentityFact.CONFIRMED
                && !answers.isEmpty()
                && answers.stream().allMatch(answer -> answer instanceof Answer.Clear);
    }

    private static VoterCaseLine decided(Decision decision) {
        VoterCaseState state = switch (decision.as()) {
            case COUNT -> VoterCaseState.COUNTED;
            case COUNT_IN_PART -> VoterCaseState.COUNTED_IN_PART;
            case REJECT -> VoterCaseState.REJECTED;
        };
        List<Reason> reasons = state == VoterCaseState.COUNTED ? List.of() : decision.reasons();
        return new VoterCaseLine(state, reasons, List.of(), false, decision.decidedAt());
    }

    private static VoterCaseLine plain(VoterCaseState state, Instant now) {
        return new VoterCaseLine(state, List.of(), List.of(), false, now);
    }
}
