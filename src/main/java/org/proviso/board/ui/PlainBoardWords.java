package org.proviso.board.ui;

import java.time.LocalDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.proviso.board.BodyKind;
import org.proviso.board.MotionKind;
import org.proviso.board.record.Minutes;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.core.deciding.Vote;
import org.proviso.ui.UsDates;

/** How plain pages of the board say times, outcomes and votes. */
public final class PlainBoardWords {

    /** {@code Thursday, November 12, 2026, 5:00 pm}. */
    public String moment(@Nullable LocalDateTime moment) {
        return moment == null ? "" : UsDates.weekday(moment.toLocalDate()) + ", " + UsDates.hour(moment.toLocalTime());
    }

    public String hour(@Nullable LocalDateTime moment) {
        return moment == null ? "" : UsDates.hour(moment.toLocalTime());
    }

    /** {@code The board}. */
    public String body(BodyKind body) {
        return capital(body.words());
    }

    public String outcome(@Nullable DecisionOutcome outcome) {
        return outcome == null ? "Reopen" : capital(outcome.words());
    }

    public String kind(MotionKind kind) {
        return switch (kind) {
            case TABLE -> "Table to a later session";
            case REOPEN -> "Reopen";
            case LET_STAND -> "Let the decision stand";
            case COUNT, COUNT_IN_PART, REJECT -> capital(kind.words());
        };
    }

    /** The class of the mark next to the word; none where nothing is settled. */
    public String mark(@Nullable DecisionOutcome outcome) {
        return outcome == null
                ? ""
                : switch (outcome) {
                    case COUNT -> "mark full";
                    case COUNT_IN_PART -> "mark half";
                    case REJECT -> "mark";
                };
    }

    public String mark(MotionKind kind) {
        return mark(kind.asks().orElse(null));
    }

    public String vote(Vote vote) {
        return switch (vote) {
            case YES -> "yes";
            case NO -> "no";
            case ABSTAINS -> "abstains";
            case RECUSED -> "recused";
        };
    }

    public String envelopes(List<String> numbers) {
        return UsDates.count(numbers.size(), "envelope");
    }

    /** The first numbers of a long list, and how many more. */
    public String numbers(List<EnvelopeNumber> numbers, int shown) {
        return BoardWords.numbers(numbers, shown);
    }

    private static String capital(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    /** Who recorded a vote for a member without a device, and what that member says of it; nothing of an own vote. */
    public String recorded(Minutes.VoteEntry vote) {
        if (vote.recordedBy().isEmpty()) {
            return "";
        }
        Boolean confirmed = vote.confirmed();
        String said = confirmed == null
                ? "to be confirmed by the member: ____________"
                : confirmed ? "confirmed by the member" : "the member says that this was not their vote";
        return " (recorded by " + vote.recordedBy() + "; " + said + ")";
    }
}
