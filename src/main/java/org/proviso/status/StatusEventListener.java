package org.proviso.status;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.proviso.board.SessionChanged;
import org.proviso.core.ReceiptNumber;
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

    /** An envelope without a receipt number has no line: nobody can type its number. */
    @EventListener
    @Transactional(propagation = Propagation.MANDATORY)
    public void caseChanged(CaseChanged news) {
        ReceiptNumber receiptNo = news.report().envelope().receiptNo();
        String envelope = secret.hash().envelope(news.key());
        String ofBefore = receiptNo == null ? envelope : secret.hash().receipt(receiptNo);
        Map<String, StatusLine> there = lines.of(envelope, ofBefore).stream()
                .collect(Collectors.toMap(StatusLine::keyHash, Function.identity(), (line, other) -> line));
        List<StatusLine> now = (receiptNo == null ? List.<StatusLine>of() : linesOf(news, receiptNo))
                .stream().map(line -> kept(line, there.get(line.keyHash()))).toList();
        if (now.size() != there.size() || !there.values().containsAll(now)) {
            lines.remove(envelope, ofBefore);
            now.forEach(lines::insert);
        }
    }

    /** The day on which a board plans to decide is told to whoever waits for it. */
    @EventListener
    @Transactional(propagation = Propagation.MANDATORY)
    public void sessionChanged(SessionChanged news) {
        sessions.put(StatusSession.of(news.session()));
    }

    private List<StatusLine> linesOf(CaseChanged news, ReceiptNumber receiptNo) {
        StatusHash hash = secret.hash();
        VoterCaseLine own = VoterCaseLine.of(news, clock.instant());
        Set<LocalDate> births = BirthDates.of(news.report());
        List<String> keys = births.isEmpty()
                ? List.of(hash.undated(receiptNo))
                : births.stream().map(born -> hash.line(receiptNo, born)).toList();
        return keys.stream()
                .map(key -> new StatusLine(
                        key,
                        hash.envelope(news.key()),
                        hash.receipt(receiptNo),
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
        return there != null && line.saysTheSame(there) ? line.since(there.changedAt()) : line;
    }
}
