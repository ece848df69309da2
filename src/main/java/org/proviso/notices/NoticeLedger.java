package org.proviso.notices;

import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.Map;
import org.proviso.intake.IntakeService;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerLine;
import org.springframework.stereotype.Component;

/** What the ledger is to say of notices: codes and moments; which letter it was only as a hash salted for the envelope. */
@Component
class NoticeLedger {

    private final IntakeService intake;

    NoticeLedger(IntakeService intake) {
        this.intake = intake;
    }

    LedgerLine sent(Notice notice, int attempt, LogNoticeSent command, Letter letter) {
        Map<String, Object> payload = payload(notice, attempt);
        payload.put("channel", command.channel().code());
        payload.put("sent_at", command.sentAt().toString());
        intake.salt(notice.key().electionId(), notice.key().envelopeNo())
                .ifPresent(salt -> payload.put("letter", salt.hash(letter.hash())));
        return line(notice, "notice_sent", payload);
    }

    LedgerLine cameBack(Notice notice, NoticeAttempt attempt, LocalDateTime at) {
        Map<String, Object> payload = payload(notice, attempt.number());
        payload.put("came_back_at", at.toString());
        return line(notice, "notice_came_back", payload);
    }

    LedgerLine takenBack(Notice notice, NoticeAttempt attempt, String because) {
        Map<String, Object> payload = payload(notice, attempt.number());
        payload.put("sent_at", attempt.sentAt().toString());
        payload.putAll(because(notice, because));
        return line(notice, "notice_taken_back", payload);
    }

    LedgerLine cameBackTakenBack(Notice notice, NoticeAttempt attempt, String because) {
        Map<String, Object> payload = payload(notice, attempt.number());
        payload.put("came_back_at", String.valueOf(attempt.cameBackAt()));
        payload.putAll(because(notice, because));
        return line(notice, "returned_mail_taken_back", payload);
    }

    private Map<String, Object> because(Notice notice, String because) {
        return intake.salt(notice.key().electionId(), notice.key().envelopeNo())
                .<Map<String, Object>>map(salt -> Map.of("because", salt.hash(because)))
                .orElse(Map.of());
    }

    private static Map<String, Object> payload(Notice notice, int attempt) {
        Map<String, Object> payload = new LinkedHashMap<>();
        payload.put("attempt", attempt);
        payload.put("kind", notice.kind().code());
        payload.put("notice", notice.number());
        if (notice.ask() != null) {
            payload.put("ask", notice.ask().code());
        }
        return payload;
    }

    private static LedgerLine line(Notice notice, String act, Map<String, Object> payload) {
        return LedgerLine.of(
                LedgerChain.of(notice.key().electionId()),
                act,
                notice.key().envelopeNo().value(),
                payload);
    }
}
