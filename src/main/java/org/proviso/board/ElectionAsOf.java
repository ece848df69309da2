package org.proviso.board;

import java.time.LocalDateTime;
import java.util.Optional;
import org.proviso.core.Election;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.deciding.DeciderKind;
import org.proviso.core.deciding.RuleChecks;
import org.proviso.core.rules.DeadlineBook;
import org.proviso.core.rules.Rules;

/** The election as its decider sees it: its rules and calendar, and the moment on the county's clock. */
public record ElectionAsOf(Election election, DeadlineBook book, LocalDateTime at) {

    /** Who decides by the rule pack; empty where it does not say. */
    public Optional<DeciderKind> decider() {
        return book.pack().code(Rules.DECIDER, DeciderKind.class);
    }

    /** Whether a session of that body makes sense. */
    Optional<Refusal> noSuchBody(BodyKind body) {
        return RuleChecks.firm(book.pack(), Rules.DECIDER)
                .or(() -> decider()
                        .filter(kind -> !body.isOf(kind))
                        .map(kind -> Refusal.of(
                                Why.NO_SUCH_BODY,
                                "The rule pack gives decisions to " + BodyKind.words(BodyKind.forDecider(kind))
                                        + ", not to " + body.words() + ".")));
    }
}
