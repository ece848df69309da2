package org.proviso.sample.cases;

import org.proviso.sample.county.Resident;
import org.proviso.sample.county.Resident.Kin;
import org.proviso.sample.envelope.DraftEnvelope;
import org.proviso.sample.envelope.EnvelopeDesk;
import org.proviso.sample.envelope.Identifier;
import org.proviso.sample.envelope.TrueOutcome;

/** People easily mistaken for a relative, and people with two envelopes. */
final class KinCases {

    private final EnvelopeDesk desk;

    KinCases(EnvelopeDesk desk) {
        this.desk = desk;
    }

    void twins(int pairs) {
        desk.times(pairs, () -> {
            Resident resident = take(Kin.TWIN);
            alike(resident, "twin");
            alike(kin(resident), "twin");
        });
    }

    void seniorAndJunior(int pairs) {
        desk.times(pairs, () -> {
            Resident senior = take(Kin.JUNIOR);
            alike(senior, "senior");
            alike(kin(senior), "junior");
        });
    }

    void childOfSameName(int count) {
        desk.times(count, () -> {
            Resident child = take(Kin.PARENT);
            String parent = kin(child).voterId();
            alike(child, "child_of_same_name").note("the birth date tells; the parent is voter " + parent);
        });
    }

    /** Father and son at one address, and nothing on the envelope says which of them. */
    void eitherOfTwo(int count) {
        desk.times(count, () -> {
            Resident resident = take(Kin.SENIOR);
            Resident other = kin(resident);
            resident.suffix = "";
            resident.middle = "";
            other.suffix = "";
            other.middle = "";
            DraftEnvelope draft = alike(resident, "fits_two_people").empty("date_of_birth", "left_blank");
            draft.empty("id_last4", "left_blank").set("drivers_license", "").only();
            draft.note("also fits voter " + other.voterId() + "; the signature tells");
        });
    }

    void twice(int pairs) {
        desk.times(pairs, () -> {
            DraftEnvelope first =
                    desk.ordinary("two_envelopes_first", TrueOutcome.COUNT).because("not_on_list");
            first.set("cast_at", desk.plan.at(desk.dice.between(8, 11), desk.dice.between(5, 55)));
            DraftEnvelope second = desk.of(first.person, "two_envelopes_second", TrueOutcome.REJECT)
                    .because("wrong_place");
            second.set("cast_at", desk.plan.at(desk.dice.between(13, 19), desk.dice.between(5, 55)));
            second.set("voting_location", desk.otherLocation(first.get("voting_location")));
            second.note("the same voter's earlier envelope counts");
        });
    }

    private DraftEnvelope alike(Resident person, String scenario) {
        return desk.of(person, scenario, TrueOutcome.COUNT)
                .because("name_mismatch")
                .only(Identifier.ADDRESS);
    }

    /** Someone whose relative is the given kin to them, both of them active and with their own birth date on file. */
    private Resident take(Kin sees) {
        Resident taken = desk.take(person -> person.kinIs == sees && plain(person) && plain(kin(person)));
        kin(taken).used = true;
        return taken;
    }

    private static boolean plain(Resident person) {
        return !person.used
                && person.roll.get("status").equals("active")
                && person.roll.get("confidential").equals("no")
                && person.roll.get("date_of_birth").equals(person.born.toString());
    }

    private static Resident kin(Resident person) {
        if (person.kin == null) {
            throw new IllegalStateException("nobody is like voter " + person.voterId());
        }
        return person.kin;
    }
}
