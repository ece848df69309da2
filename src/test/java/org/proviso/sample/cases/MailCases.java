package org.proviso.sample.cases;

import java.time.LocalDate;
import org.proviso.sample.county.Registrar;
import org.proviso.sample.envelope.DraftEnvelope;
import org.proviso.sample.envelope.EnvelopeDesk;
import org.proviso.sample.envelope.TrueOutcome;

/** Voters to whom a mail ballot had been sent. */
final class MailCases {

    private static final String REASON = "mail_ballot_issued";

    private final EnvelopeDesk desk;

    MailCases(EnvelopeDesk desk) {
        this.desk = desk;
    }

    void outstanding(int count) {
        desk.times(count, () -> {
            DraftEnvelope draft = start("mail_outstanding", TrueOutcome.COUNT).set("mail_ballot_surrendered", "no");
            record(draft, "outstanding", issued());
        });
    }

    void surrendered(int count) {
        desk.times(count, () -> {
            DraftEnvelope draft = start("mail_surrendered", TrueOutcome.COUNT).set("mail_ballot_surrendered", "yes");
            record(draft, "surrendered", desk.plan.date());
        });
    }

    /** A mail ballot that ended without a vote: rejected, late, void or undeliverable. */
    void ended(String state, int count) {
        desk.times(count, () -> {
            int after = state.equals("late") ? 1 : -desk.dice.between(3, 12);
            record(
                    start("mail_" + state, TrueOutcome.COUNT),
                    state,
                    desk.plan.date().plusDays(after));
        });
    }

    void accepted(int count) {
        desk.times(count, () -> accepted(start("mail_accepted", TrueOutcome.REJECT)));
    }

    void accepted(DraftEnvelope draft) {
        record(draft, "accepted", desk.plan.date().minusDays(desk.dice.between(1, 14)));
    }

    void returned(int count) {
        desk.times(
                count,
                () -> record(
                        start("mail_returned", TrueOutcome.REJECT)
                                .note("returned and not yet decided at noon; the mail-ballot office accepted it later"),
                        "returned",
                        desk.plan.date().minusDays(desk.dice.between(0, 1))));
    }

    void reissued(String secondState, TrueOutcome outcome, int count) {
        desk.times(count, () -> {
            DraftEnvelope draft = start("mail_reissued_" + secondState, outcome);
            LocalDate first = issued();
            desk.mail(draft.person, first, "void", first.plusDays(9));
            LocalDate on = secondState.equals("accepted") ? desk.plan.date().minusDays(4) : first.plusDays(9);
            desk.mail(draft.person, first.plusDays(9), secondState, on);
        });
    }

    private DraftEnvelope start(String scenario, TrueOutcome outcome) {
        return desk.ordinary(scenario, outcome).because(REASON);
    }

    private void record(DraftEnvelope draft, String state, LocalDate on) {
        LocalDate issued = issued();
        desk.mail(draft.person, issued, state, state.equals("outstanding") ? issued : on);
    }

    private LocalDate issued() {
        LocalDate drawn =
                desk.dice.day(desk.plan.date().minusDays(40), desk.plan.date().minusDays(20));
        return Registrar.onADayOf("mail", drawn);
    }
}
