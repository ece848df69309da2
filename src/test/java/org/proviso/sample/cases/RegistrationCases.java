package org.proviso.sample.cases;

import java.time.LocalDate;
import org.proviso.sample.county.Registrar;
import org.proviso.sample.envelope.DraftEnvelope;
import org.proviso.sample.envelope.EnvelopeDesk;
import org.proviso.sample.envelope.TrueOutcome;

/** Registrations that came late, on the last day, are pending, or were cancelled. */
final class RegistrationCases {

    private final EnvelopeDesk desk;

    RegistrationCases(EnvelopeDesk desk) {
        this.desk = desk;
    }

    void late(int byMail, int otherwise) {
        desk.times(byMail, () -> late(true));
        desk.times(otherwise, () -> late(false));
    }

    DraftEnvelope late(boolean byMail) {
        LocalDate deadline = byMail ? desk.plan.lastPostmark() : desk.plan.lastDayInPerson();
        String channel = byMail ? "mail" : channel();
        LocalDate on = Registrar.onADayOf(channel, deadline.plusDays(desk.dice.between(1, 12)));
        return registered("registered_late", TrueOutcome.REJECT, on, channel);
    }

    void onTheLastDay() {
        registered("registered_on_last_day", TrueOutcome.COUNT, desk.plan.lastPostmark(), "mail")
                .note("postmarked on the last day, received later");
        registered("registered_on_last_day", TrueOutcome.COUNT, desk.plan.lastDayInPerson(), "in_person");
    }

    private DraftEnvelope registered(String scenario, TrueOutcome outcome, LocalDate on, String channel) {
        DraftEnvelope draft = desk.ordinary(scenario, outcome).because("not_on_list");
        int delay = channel.equals("mail") ? desk.dice.between(2, 4) : channel.equals("agency") ? 1 : 0;
        draft.person.roll.set("registration_date", on).set("registration_channel", channel);
        draft.person.roll.set("received_on", on.plusDays(delay)).set("last_voted_on", "");
        if (!draft.person.party().isEmpty()) {
            draft.person.roll.set("party_since", on);
        }
        return draft.note(channel + " registration of " + on);
    }

    private String channel() {
        return desk.dice.pick("in_person", "online", "drive", "motor_vehicle", "agency");
    }

    void pending(int count) {
        desk.times(count, this::pending);
    }

    DraftEnvelope pending() {
        LocalDate drawn = desk.plan.lastPostmark().minusDays(desk.dice.between(2, 40));
        LocalDate on = Registrar.onADayOf("mail", drawn);
        DraftEnvelope draft = registered("pending", TrueOutcome.WAIT, on, "mail");
        draft.person.roll.set("status", "pending").set("status_reason", "number_not_matched");
        draft.person.roll.set("status_on", on.plusDays(6)).set("number_matched", "no");
        return draft;
    }

    void cancelled(int count) {
        desk.times(count, () -> {
            DraftEnvelope draft = desk.ordinary("cancelled", TrueOutcome.REJECT).because("not_on_list");
            String reason = desk.dice.pick("moved_out_of_county", "requested", "no_reply_to_notice");
            draft.person.roll.set("status", "cancelled").set("status_reason", reason);
            draft.person.roll.set("status_on", desk.dice.day(LocalDate.of(2025, 1, 15), LocalDate.of(2026, 4, 30)));
        });
    }
}
