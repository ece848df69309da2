package org.proviso.core.adjudication.judging;

import java.time.LocalDateTime;
import java.util.Map;
import java.util.Optional;
import org.proviso.core.adjudication.questions.AskStatus;
import org.proviso.core.adjudication.questions.CaseClocks;
import org.proviso.core.calendar.Deadline;
import org.proviso.core.rules.Ask;
import org.proviso.core.rules.DeadlineBook;
import org.proviso.core.rules.ResolvedRule;
import org.proviso.core.rules.Rule;
import org.proviso.core.rules.RuleValue;
import org.proviso.core.rules.Rules;

/**
 * The clocks of one case at one moment: the election's deadlines, the as-of time (local to the county), and when the
 * notice of each ask was logged as sent.
 */
public record ElectionClocks(DeadlineBook book, LocalDateTime asOf, Map<Ask, LocalDateTime> noticesSent)
        implements CaseClocks {

    @Override
    public Optional<Deadline> deadline(Ask ask) {
        return book.cure(ask, noticesSent.get(ask));
    }

    @Override
    public boolean waitsForTheMeeting(Ask ask) {
        return book.waitsForTheMeeting(ask);
    }

    @Override
    public AskStatus ask(Ask ask) {
        ResolvedRule given = book.pack().of(Rule.cure(ask));
        if (!given.isKnown()) {
            return AskStatus.NOT_SETTLED;
        }
        if (given.value() instanceof RuleValue.NoDeadline) {
            return AskStatus.OVER;
        }
        Optional<Deadline> deadline = deadline(ask);
        if (book.waitsForTheMeeting(ask)) {
            return AskStatus.RUNNING;
        }
        if (deadline.isEmpty()) {
            return decisionsAreDue() ? AskStatus.OVER_WITHOUT_NOTICE : AskStatus.RUNNING;
        }
        if (!deadline.get().hasPassed(asOf)) {
            return AskStatus.RUNNING;
        }
        return wasTold(ask) ? AskStatus.OVER : AskStatus.OVER_WITHOUT_NOTICE;
    }

    /** An ask counted from a notice that was never sent does not run for ever: then a person must look. */
    private boolean decisionsAreDue() {
        return book.of(Rules.DECISION).map(deadline -> deadline.hasPassed(asOf)).orElse(false);
    }

    /** Running out counts against the voter only if the notice went out in time, where the law demands one. */
    private boolean wasTold(Ask ask) {
        ResolvedRule required = book.pack().of(Rule.noticeRequired(ask));
        if (required.isKnown() && !required.isYes()) {
            return true;
        }
        LocalDateTime sent = noticesSent.get(ask);
        if (sent == null) {
            return false;
        }
        return book.of(Rule.notice(ask)).map(due -> !due.hasPassed(sent)).orElse(true);
    }

    @Override
    public boolean mailReceiptPassed() {
        return book.of(Rules.MAIL_RECEIPT)
                .map(deadline -> deadline.hasPassed(asOf))
                .orElse(false);
    }
}
