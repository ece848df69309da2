package org.proviso.core.adjudication.judging;

import java.time.LocalDateTime;
import java.util.Map;
import java.util.Optional;
import org.proviso.core.adjudication.questions.AskClock;
import org.proviso.core.adjudication.questions.Clocks;
import org.proviso.core.calendar.Deadline;
import org.proviso.core.rules.Ask;
import org.proviso.core.rules.DeadlineBook;
import org.proviso.core.rules.Given;
import org.proviso.core.rules.Rule;
import org.proviso.core.rules.RuleValue;
import org.proviso.core.rules.Rules;

/**
 * The clocks of one case at one moment: the election's deadlines, the as-of time (local to the county), and when the
 * notice of each ask was logged as sent.
 */
public record ElectionClocks(DeadlineBook book, LocalDateTime asOf, Map<Ask, LocalDateTime> noticesSent)
        implements Clocks {

    @Override
    public Optional<Deadline> deadline(Ask ask) {
        return book.cure(ask, noticesSent.get(ask));
    }

    @Override
    public AskClock ask(Ask ask) {
        Given given = book.pack().of(Rule.cure(ask));
        if (!given.isKnown()) {
            return AskClock.NOT_SETTLED;
        }
        if (given.value() instanceof RuleValue.NoDeadline) {
            return AskClock.OVER;
        }
        Optional<Deadline> deadline = deadline(ask);
        if (deadline.isEmpty()) {
            return decisionsAreDue() ? AskClock.OVER_WITHOUT_NOTICE : AskClock.RUNNING;
        }
        if (!deadline.get().hasPassed(asOf)) {
            return AskClock.RUNNING;
        }
        return wasTold(ask) ? AskClock.OVER : AskClock.OVER_WITHOUT_NOTICE;
    }

    /** An ask counted from a notice that was never sent does not run for ever: then a person must look. */
    private boolean decisionsAreDue() {
        return book.of(Rules.DECISION).map(deadline -> deadline.hasPassed(asOf)).orElse(false);
    }

    /** Running out counts against the voter only if the notice went out in time, where the law demands one. */
    private boolean wasTold(Ask ask) {
        Given required = book.pack().of(Rule.noticeRequired(ask));
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
