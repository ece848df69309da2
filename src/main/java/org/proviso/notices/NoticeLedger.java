package org.proviso.notices;

import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.Map;
import org.proviso.access.OfficeUser;
import org.proviso.intake.IntakeService;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;
import org.springframework.stereotype.Component;

/** What the ledger has of notices: codes and moments; which letter it was only as a hash salted for the envelope. */
@Component
class NoticeLedger {

    private final LedgerService ledger;
    private final IntakeService intake;

    NoticeLedger(LedgerService ledger, IntakeService intake) {
        this.ledger = ledger;
        this.intake = intake;
    }

    void sent(Notice notice, int attempt, LogNoticeSent command, Letter letter, OfficeUser user) {
        Map<String, Object> payload = payload(notice, attempt);
        payload.put("channel", command.channel().code());
        payload.put("sent_at", command.sentAt().toString());
        intake.salt(notice.key().electionId(), notice.key().envelopeNo())
                .ifPresent(salt -> payload.put("letter", salt.hash(letter.hash())));
        record(notice, user, "notice_sent", payload);
    }

    void cameBack(Notice notice, NoticeAttempt attempt, LocalDateTime at, OfficeUser user) {
        Map<String, Object> payload = payload(notice, attempt.number());
        payload.put("came_back_at", at.toString());
        record(notice, user, "notice_came_back", payload);
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

    private void record(Notice notice, OfficeUser user, String act, Map<String, Object> payload) {
        ledger.record(
                LedgerChain.of(notice.key().electionId()),
                user.actor(),
                act,
                notice.key().envelopeNo().value(),
                payload);
    }
}
