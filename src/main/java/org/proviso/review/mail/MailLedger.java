package org.proviso.review.mail;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerLine;
import org.proviso.review.CaseActSteps;
import org.springframework.stereotype.Component;

/** What the ledger has of lists for the mail-ballot desk: an entry for each line; all of a voter is hidden. */
@Component
class MailLedger {

    private final CaseActSteps steps;

    MailLedger(CaseActSteps steps) {
        this.steps = steps;
    }

    LedgerLine sent(List<SentLine> made) {
        return line("mail_list_sent", made, line -> listed(line, made.size()));
    }

    LedgerLine answered(DeskAnswerFacts.Saved done) {
        return line("mail_desk_answered", done.answers().keySet(), line -> answered(line, done));
    }

    LedgerLine corrected(DeskAnswerFacts.Saved done) {
        return line("mail_answer_corrected", done.answers().keySet(), line -> answered(line, done));
    }

    private static LedgerLine line(
            String act, Collection<SentLine> lines, Function<SentLine, Map<String, Object>> payload) {
        ElectionId electionId = lines.iterator().next().line().key().electionId();
        Map<String, Map<String, Object>> payloads = new LinkedHashMap<>();
        lines.forEach(line -> payloads.put(line.line().key().envelopeNo().value(), payload.apply(line)));
        return new LedgerLine(LedgerChain.of(electionId), act, payloads);
    }

    private Map<String, Object> listed(SentLine sent, int lines) {
        MailLine line = sent.line();
        EnvelopeKey key = line.key();
        Map<String, Object> payload = place(sent);
        payload.put("lines", lines);
        payload.put("what", line.kind().code());
        payload.put("decision", line.decision());
        payload.put("voter", steps.hidden(key, line.voterId().value()));
        payload.put("name", steps.hidden(key, line.voterName()));
        payload.put("receipt", steps.hidden(key, line.receiptNo()));
        payload.put("ballots", steps.hidden(key, line.ballots()));
        return payload;
    }

    private Map<String, Object> answered(SentLine line, DeskAnswerFacts.Saved done) {
        EnvelopeKey key = line.line().key();
        GivenAnswer given = Objects.requireNonNull(done.answers().get(line), "each line that was saved has its answer");
        Map<String, Object> payload = place(line);
        payload.put("answer", given.answer().code());
        payload.put("answered_on", given.answeredOn().toString());
        payload.put("answered_by", steps.hidden(key, given.answeredBy()));
        if (!given.because().isEmpty()) {
            payload.put("because", steps.hidden(key, given.because()));
        }
        String fact = done.added().get(line);
        if (fact != null) {
            payload.put("fact_reason", steps.hidden(key, fact));
        }
        if (done.takenBack().contains(line)) {
            payload.put("fact_taken_back", true);
        }
        return payload;
    }

    private static Map<String, Object> place(SentLine line) {
        Map<String, Object> payload = new LinkedHashMap<>();
        payload.put("list", line.listNo());
        payload.put("line", line.lineNo());
        return payload;
    }
}
