package org.proviso.sample.cases;

import java.time.LocalDate;
import org.proviso.sample.county.Registrar;
import org.proviso.sample.county.Resident;
import org.proviso.sample.envelope.DraftEnvelope;
import org.proviso.sample.envelope.EnvelopeDesk;
import org.proviso.sample.envelope.Identifier;
import org.proviso.sample.envelope.TrueOutcome;

/** Envelopes in which nothing stands in the way, however odd some of them look. */
final class OrderCases {

    private final EnvelopeDesk desk;

    OrderCases(EnvelopeDesk desk) {
        this.desk = desk;
    }

    void plain(int count) {
        desk.times(
                count,
                () -> desk.ordinary("in_order", TrueOutcome.COUNT)
                        .because(desk.dice.pick("not_on_list", "not_on_list", "name_mismatch", "list_unavailable")));
    }

    void inactive(int count) {
        desk.times(count, () -> {
            Resident person = desk.take(EnvelopeDesk::ordinary);
            LocalDate notice = desk.dice.day(LocalDate.of(2024, 2, 1), LocalDate.of(2025, 6, 30));
            Registrar.inactive(person.roll, notice);
            if (person.roll.get("last_voted_on").compareTo(notice.toString()) > 0) {
                person.roll.set("last_voted_on", "");
            }
            desk.of(person, "inactive", TrueOutcome.COUNT).because("inactive").note("inactive voters are registered");
        });
    }

    void confidential(int count) {
        desk.times(count, () -> {
            DraftEnvelope draft =
                    desk.ordinary("protected_address", TrueOutcome.COUNT).because("not_on_list");
            String box = "PO Box " + desk.dice.between(10, 980) + ", Millbrook 49871";
            draft.person.roll.set("confidential", "yes").set("mail_address", box);
            draft.set("mail_address_line", box);
        });
    }

    void officialDidNotSign(int count) {
        desk.times(
                count,
                () -> desk.ordinary("official_signature_missing", TrueOutcome.COUNT)
                        .because("not_on_list")
                        .set("official_signed", "no"));
    }

    void officialErred(int count) {
        desk.times(
                count,
                () -> desk.ordinary("official_error", TrueOutcome.COUNT)
                        .because("list_unavailable")
                        .set("sent_here_by_official", "yes")
                        .set(
                                "official_note",
                                "I looked in the wrong list at first; the voter was in the right room after all."));
    }

    void condition(String condition, int count) {
        desk.times(
                count,
                () -> desk.ordinary(condition, TrueOutcome.COUNT)
                        .because("not_on_list")
                        .set("envelope_condition", condition)
                        .note("what is inside is known only at opening"));
    }

    void placeholderBirthDate(int count) {
        desk.times(count, () -> {
            Resident person = desk.take(candidate -> EnvelopeDesk.ordinary(candidate)
                    && candidate.roll.get("registration_date").compareTo("1998") < 0
                    && !candidate.roll.blank("id_last4"));
            person.roll.set("date_of_birth", desk.dice.pick("1900-01-01", "1800-01-01"));
            desk.of(person, "placeholder_birth_date", TrueOutcome.COUNT)
                    .because("not_on_list")
                    .only(Identifier.ADDRESS);
        });
    }

    /** A box is empty, unreadable or refused, and the person is still found beyond doubt. */
    void emptyBox(String field, String state, int count) {
        desk.times(count, () -> {
            Resident person = desk.take(candidate -> EnvelopeDesk.ordinary(candidate)
                    && !candidate.roll.blank("id_last4")
                    && desk.county.namesake(candidate).isEmpty());
            DraftEnvelope draft =
                    desk.of(person, "empty_box", TrueOutcome.COUNT).because("name_mismatch");
            draft.empty(field, state).note(field + " " + state).only();
        });
    }

    void challenged(int count) {
        desk.times(
                count,
                () -> desk.ordinary("challenged", TrueOutcome.COUNT)
                        .because("challenged")
                        .note("challenged at the table without more; nothing was filed"));
    }
}
