package org.proviso.sample.cases;

import org.proviso.sample.county.Dwelling;
import org.proviso.sample.county.FileColumns;
import org.proviso.sample.county.FileRow;
import org.proviso.sample.county.Resident;
import org.proviso.sample.envelope.DraftEnvelope;
import org.proviso.sample.envelope.EnvelopeDesk;
import org.proviso.sample.envelope.Identifier;
import org.proviso.sample.envelope.TrueOutcome;

/** People the roll does not hold, and one whom it holds but who voted in another county. */
final class StrangerCases {

    private static final String NEIGHBOR = "Alder County";

    private final EnvelopeDesk desk;

    StrangerCases(EnvelopeDesk desk) {
        this.desk = desk;
    }

    void notOnRoll(int count) {
        desk.times(count, () -> notOnRoll(TrueOutcome.REJECT));
    }

    DraftEnvelope notOnRoll(TrueOutcome outcome) {
        DraftEnvelope draft = desk.stranger(stranger(desk.families.home()), "not_on_roll", outcome);
        return draft.because("not_on_list").only(Identifier.NUMBER);
    }

    void ofNeighborCounty(int count) {
        desk.times(count, () -> {
            Resident person = stranger(desk.families.home());
            DraftEnvelope draft =
                    desk.stranger(person, "other_county", TrueOutcome.SENT_ON).because("not_on_list");
            boolean alderton = desk.dice.chance(0.6);
            draft.set("residence_address_line", desk.dice.between(20, 990) + " " + street());
            draft.set("unit", "").set("city", alderton ? "Alderton" : "Pine Crossing");
            draft.set("zip", alderton ? "49911" : "49915")
                    .note("lives in " + NEIGHBOR)
                    .only(Identifier.NUMBER);
        });
    }

    private String street() {
        return desk.dice.pick("Cutler Ave", "Tannery Rd", "Alder Mill Rd", "Switchback Ln", "Kiln St");
    }

    private Resident stranger(Dwelling home) {
        Resident person = desk.families.stranger(home, desk.dice.between(18, 79));
        while (desk.county.onRoll(person.last, person.first)) {
            person = desk.families.stranger(home, desk.dice.between(18, 79));
        }
        person.roll.set("party", desk.dice.pick(desk.plan.parties()));
        return person;
    }

    /** The state's list names this voter exactly; the other lines of the list are of people without an envelope. */
    void votedElsewhere(int count, int decoys) {
        desk.times(count, () -> {
            Resident person = desk.take(candidate -> EnvelopeDesk.ordinary(candidate)
                    && !candidate.roll.blank("id_last4")
                    && !candidate.roll.blank("drivers_license"));
            desk.of(person, "voted_elsewhere", TrueOutcome.REJECT).because("not_on_list");
            list(person, person.roll.get("id_last4"), person.roll.get("drivers_license"));
        });
        desk.times(decoys, () -> {
            Resident person = desk.families.stranger(desk.families.home(), desk.dice.between(18, 85));
            list(person, desk.dice.digits(4), "");
        });
    }

    private void list(Resident person, String last4, String license) {
        desk.elsewhere.add(new FileRow(FileColumns.ELSEWHERE)
                .set("last_name", person.last)
                .set("first_name", person.first)
                .set("middle_name", person.middle)
                .set("suffix", person.suffix)
                .set("date_of_birth", person.born)
                .set("id_last4", last4)
                .set("drivers_license", license)
                .set("county", NEIGHBOR)
                .set("how", "in_person")
                .set("on", desk.plan.date()));
    }
}
