package org.proviso.sample.cases;

import java.time.LocalDate;
import org.proviso.sample.envelope.DraftEnvelope;
import org.proviso.sample.envelope.EnvelopeDesk;
import org.proviso.sample.envelope.Identifier;
import org.proviso.sample.envelope.TrueOutcome;

/** What was shown and signed at the table: identification, the voter's signature, and how the envelope ended. */
final class TableCases {

    private final EnvelopeDesk desk;

    TableCases(EnvelopeDesk desk) {
        this.desk = desk;
    }

    void noId(int count) {
        desk.times(count, () -> desk.ordinary("no_id", TrueOutcome.WAIT).withoutId());
    }

    void impediment(int count) {
        desk.times(
                count,
                () -> desk.ordinary("no_id_impediment", TrueOutcome.COUNT)
                        .withoutId()
                        .set("declaration", "impediment"));
    }

    /** A mail ballot that came without the identification it needed and is treated as a provisional one. */
    void mailWithoutId(int count) {
        desk.times(count, () -> {
            DraftEnvelope draft =
                    desk.ordinary("mail_without_id", TrueOutcome.WAIT).withoutId();
            LocalDate arrived = desk.plan.date().minusDays(desk.dice.between(4, 7));
            draft.set("source", "mail_without_id").set("voting_location", "");
            draft.set("cast_at", arrived.atTime(9, desk.dice.between(10, 50)));
            draft.checkedIn = false;
            desk.mail(draft.person, arrived.minusDays(18), "void", arrived);
            draft.note("the mail-ballot office voided the serial when it handed the envelope over");
        });
    }

    void unsigned(int count) {
        desk.times(
                count,
                () -> desk.ordinary("voter_signature_missing", TrueOutcome.WAIT)
                        .because("not_on_list")
                        .unsigned());
    }

    void mark(boolean witnessed) {
        TrueOutcome outcome = witnessed ? TrueOutcome.COUNT : TrueOutcome.WAIT;
        desk.ordinary(witnessed ? "mark_with_witness" : "mark_without_witness", outcome)
                .because("not_on_list")
                .set("voter_signed", "mark")
                .set("mark_witness", witnessed ? "yes" : "no")
                .note("signed with a mark; there is nothing to compare");
    }

    void anotherHand(int count) {
        desk.times(count, () -> {
            DraftEnvelope draft =
                    desk.ordinary("another_hand", TrueOutcome.REJECT).because("not_on_list");
            draft.signature = "another_hand";
            draft.only(Identifier.ADDRESS);
        });
    }

    /** An envelope the voter took back or spoiled; it ends without a decision on a vote. */
    void ended(String condition) {
        desk.ordinary(condition, TrueOutcome.END).because("not_on_list").set("envelope_condition", condition);
    }
}
