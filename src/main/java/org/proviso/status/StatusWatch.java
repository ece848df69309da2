package org.proviso.status;

import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.proviso.review.CaseChanged;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** Keeps the lines of the look-up as cases move, in the transaction that moves them; the case is held by then. */
@Component
class StatusWatch {

    private final StatusLineStore lines;
    private final OfficeSecret secret;
    private final Clock clock;

    StatusWatch(StatusLineStore lines, OfficeSecret secret, Clock clock) {
        this.lines = lines;
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

    private List<StatusLine> linesOf(CaseChanged news, String receiptHash) {
        OwnLine own = OwnLine.of(news, clock.instant());
        return BirthDates.of(news.report()).stream()
                .map(born -> new StatusLine(
                        secret.hash().line(news.report().envelope().receiptNo(), born),
                        receiptHash,
                        news.key().electionId(),
                        own.state(),
                        own.reasons(),
                        own.asks(),
                        own.asksUntil(),
                        own.since()))
                .toList();
    }

    /** What reads as before has changed when it did, not now. */
    private static StatusLine kept(StatusLine line, @Nullable StatusLine there) {
        return there != null && line.saysTheSame(there) ? there : line;
    }
}
