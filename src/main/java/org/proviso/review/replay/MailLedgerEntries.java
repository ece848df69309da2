package org.proviso.review.replay;

import java.util.Map;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.MailBallotFact;
import org.proviso.core.chain.LedgerEntry;
import org.proviso.review.facts.AnswerKind;

/** Entries of what the mail-ballot desk was told and what it answered; none of them moves a case. */
final class MailLedgerEntries {

    private MailLedgerEntries() {}

    static void put(Map<String, CaseLedgerEntry> kinds) {
        kinds.put("mail_list_sent", (trail, entry, all) -> listed(trail, entry));
        kinds.put("mail_desk_answered", (trail, entry, all) -> answered(trail, entry));
        kinds.put("mail_answer_corrected", (trail, entry, all) -> answered(trail, entry));
    }

    private static boolean listed(CaseTrail trail, LedgerEntry entry) {
        Map<String, Object> said = entry.payload();
        trail.add(
                CaseTable.MAIL_LINE,
                new ExpectedRow(entry)
                        .with("list_no", said.get("list"))
                        .with("line_no", said.get("line"))
                        .with("kind", said.get("what"))
                        .with("decision_no", said.get("decision"))
                        .with("voter_id", said.get("voter"))
                        .with("voter_name", said.get("name"))
                        .with("receipt_no", said.get("receipt"))
                        .with("ballots", said.get("ballots"))
                        .with("sent_by", entry.actor()));
        return true;
    }

    private static boolean answered(CaseTrail trail, LedgerEntry entry) {
        Map<String, Object> said = entry.payload();
        trail.add(
                CaseTable.MAIL_ANSWER,
                new ExpectedRow(entry)
                        .with("list_no", said.get("list"))
                        .with("line_no", said.get("line"))
                        .with("answer", said.get("answer"))
                        .with("answered_on", said.get("answered_on"))
                        .with("answered_by", said.get("answered_by"))
                        .with("because", said.get("because"))
                        .with("recorded_by", entry.actor()));
        if (said.containsKey("fact_taken_back")) {
            trail.rows(CaseTable.ANSWER).stream()
                    .filter(answer -> answer.has("kind", AnswerKind.OTHER.code()) && answer.has("withdrawn_at", ""))
                    .toList()
                    .forEach(answer -> answer.with("withdrawn_at", "yes"));
        }
        if (said.containsKey("fact_reason")) {
            trail.add(
                    CaseTable.ANSWER,
                    new ExpectedRow(entry)
                            .with("kind", AnswerKind.OTHER.code())
                            .with("fact", Fact.MAIL_BALLOTS.key())
                            .with("fact_words", MailBallotFact.ACCEPTED.code())
                            .with("reason", said.get("fact_reason"))
                            .with("given_by", entry.actor()));
        }
        return true;
    }
}
