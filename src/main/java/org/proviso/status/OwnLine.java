package org.proviso.status;

import java.time.Instant;
import java.util.List;
import org.proviso.core.adjudication.CaseReport;
import org.proviso.core.adjudication.facts.Identity;
import org.proviso.core.adjudication.judging.Answered;
import org.proviso.core.adjudication.judging.DueAsk;
import org.proviso.core.adjudication.questions.Answer;
import org.proviso.core.adjudication.questions.Heading;
import org.proviso.core.calendar.Deadline;
import org.proviso.core.rules.Reason;
import org.proviso.review.CaseChanged;
import org.proviso.review.CaseState;
import org.proviso.review.Decision;

/**
 * What a voter may know of a case: the state, reasons once it is decided, and while it is not, whether the registration
 * was found and what to bring by when.
 */
record OwnLine(OwnState state, List<Reason> reasons, List<OwnAsk> asks, boolean registrationFound, Instant since) {

    /** {@code now}: since when it reads so, where the case is not decided. */
    static OwnLine of(CaseChanged news, Instant now) {
        return switch (news.state()) {
            case RECEIVED, OPEN, IN_REVIEW, PROPOSED, READY -> undecided(news, now);
            case DECIDED, RELEASED ->
                news.decision().map(OwnLine::decided).orElseGet(() -> plain(OwnState.UNDER_REVIEW, now));
            case SENT_ON -> plain(OwnState.SENT_ON, now);
            case ENDED -> plain(OwnState.NOT_VOTED, now);
        };
    }

    /** No word of who has the case or what is proposed: moving between reviewers changes nothing here. */
    private static OwnLine undecided(CaseChanged news, Instant now) {
        List<OwnAsk> asks = news.report().asks().stream().map(OwnLine::ask).toList();
        OwnState without = news.state() == CaseState.RECEIVED ? OwnState.RECEIVED : OwnState.UNDER_REVIEW;
        OwnState state = asks.isEmpty() ? without : OwnState.WAITS_FOR_YOU;
        return new OwnLine(state, List.of(), asks, registrationFound(news.report()), now);
    }

    private static OwnAsk ask(DueAsk due) {
        return new OwnAsk(due.ask(), due.deadline().map(Deadline::lastMoment).orElse(null));
    }

    /**
     * Only what speaks for the voter is told before a decision: a person confirmed whose record it is, and the record
     * answers the question in full.
     */
    private static boolean registrationFound(CaseReport report) {
        List<Answer> answers = report.settled().answered().stream()
                .filter(one -> one.question().heading() == Heading.REGISTRATION)
                .map(Answered::answer)
                .toList();
        return report.link().identity() == Identity.CONFIRMED
                && !answers.isEmpty()
                && answers.stream().allMatch(answer -> answer instanceof Answer.Clear);
    }

    private static OwnLine decided(Decision decision) {
        OwnState state = switch (decision.as()) {
            case COUNT -> OwnState.COUNTED;
            case COUNT_IN_PART -> OwnState.COUNTED_IN_PART;
            case REJECT -> OwnState.REJECTED;
        };
        List<Reason> reasons = state == OwnState.COUNTED ? List.of() : decision.reasons();
        return new OwnLine(state, reasons, List.of(), false, decision.decidedAt());
    }

    private static OwnLine plain(OwnState state, Instant now) {
        return new OwnLine(state, List.of(), List.of(), false, now);
    }
}
