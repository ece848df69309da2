package org.proviso.status;

import java.time.Instant;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.proviso.core.adjudication.DueAsk;
import org.proviso.core.calendar.Deadline;
import org.proviso.core.rules.Ask;
import org.proviso.core.rules.Reason;
import org.proviso.review.CaseChanged;
import org.proviso.review.CaseState;
import org.proviso.review.Decision;

/** What a voter may know of a case: the state, reasons once it is decided, and while it is not, what to bring by when. */
record OwnLine(
        OwnState state,
        List<Reason> reasons,
        List<Ask> asks,
        @Nullable LocalDateTime asksUntil,
        Instant since) {

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
        List<DueAsk> asks = news.report().asks();
        if (asks.isEmpty()) {
            return plain(news.state() == CaseState.RECEIVED ? OwnState.RECEIVED : OwnState.UNDER_REVIEW, now);
        }
        LocalDateTime until = asks.stream()
                .map(DueAsk::deadline)
                .flatMap(Optional::stream)
                .map(Deadline::lastMoment)
                .min(Comparator.naturalOrder())
                .orElse(null);
        return new OwnLine(
                OwnState.WAITS_FOR_YOU,
                List.of(),
                asks.stream().map(DueAsk::ask).toList(),
                until,
                now);
    }

    private static OwnLine decided(Decision decision) {
        OwnState state = switch (decision.as()) {
            case COUNT -> OwnState.COUNTED;
            case COUNT_IN_PART -> OwnState.COUNTED_IN_PART;
            case REJECT -> OwnState.REJECTED;
        };
        List<Reason> reasons = state == OwnState.COUNTED ? List.of() : decision.reasons();
        return new OwnLine(state, reasons, List.of(), null, decision.decidedAt());
    }

    private static OwnLine plain(OwnState state, Instant now) {
        return new OwnLine(state, List.of(), List.of(), null, now);
    }
}
