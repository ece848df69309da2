package org.proviso.status;

import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.proviso.board.SessionChanged;
import org.proviso.review.CaseChanged;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/**
 * Keeps the lines of the look-up as cases move and sessions are called, in the transaction of the act; the case, or the
 * session, is held by then.
 */
@Component
class StatusEventListener {

    private final StatusLineStore lines;
    private final StatusSessionStore sessions;
    private final OfficeSecret secret;
    private final Clock clock;

    StatusEventListener(StatusLineStore lines, StatusSessionStore sessions, OfficeSecret secret, Clock clock) {
        this.lines = lines;
        this.sessions = sessions;
        this.secret = secret;
        this.clock = clock;
    }

    @EventListener
    @Transactional(propagation = Propagation.MANDATORY)
    public void caseChanged(CaseChanged news) {
        String receiptHash = secret.hash().receipt(news.report().envelope().receiptNo());
        Map<String, StatusLine> there = lines.ofReceipt(receiptHash).stream()
                .collect(Collectors.toMap(StatusLine::keyHash, Function.identity()));
        List<StatusLine> now = linesOf(news, receiptHash).stream()
                .map(line -> kept(line, there.get(line.keyHash())))
                .toList();
        if (now.size() != there.size() || !there.values().containsAll(now)) {
            lines.removeReceipt(receiptHash);
            now.forEach(lines::insert);
        }
    }

    /** The day on which a board plans to decide is told to whoever waits for it. */
    @EventListener
    @Transactional(propagation = Propagation.MANDATORY)
    public void sessionChanged(SessionChanged news) {
        sessions.put(StatusSession.of(news.session()));
    }

    private List<StatusLine> linesOf(CaseChanged news, String receiptHash) {
        VoterCaseLine own = VoterCaseLine.of(news, clock.instant());
        return BirthDates.of(news.report()).stream()
                .map(born -> new StatusLine(
                        secret.hash().line(news.report().envelope().receiptNo(), born),
                        receiptHash,
                        news.key().electionId(),
                        own.state(),
                        own.reasons(),
                        own.asks(),
                        Arrival.of(news.report().envelope()),
                        own.registrationFound(),
                        own.since()))
                .toList();
    }

    /** What reads as before has changed when it did, not now. */
    private static StatusLine kept(StatusLine line, @Nullable StatusLine there) {
        return there != null && line.saysTheSame(there) ? there : line;
    }
}
