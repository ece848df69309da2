package org.proviso.sample.envelope;

import java.time.LocalDate;
import java.util.Locale;
import org.proviso.sample.county.County;
import org.proviso.sample.county.CountyPart;
import org.proviso.sample.county.Dice;
import org.proviso.sample.county.Dwelling;
import org.proviso.sample.county.FileRow;
import org.proviso.sample.county.Resident;

/** Fills an envelope as a careful voter and a careful official would; scenarios and blemishes then change it. */
public final class AffirmationForm {

    /** Envelopes are cast from a quarter past seven until shortly before eight in the evening. */
    private static final int OPEN_MINUTES = 755;

    private final County county;
    private final Dice dice;

    AffirmationForm(County county, Dice dice) {
        this.county = county;
        this.dice = dice;
    }

    void fill(DraftEnvelope draft) {
        cast(draft);
        name(draft);
        residence(draft);
        numbers(draft);
        contact(draft);
        table(draft);
    }

    private void cast(DraftEnvelope draft) {
        CountyPart part = draft.person.home.part();
        String party = draft.person.party();
        draft.set("source", "poll").set("voting_location", part.location()).set("precinct_cast", part.precinct());
        draft.set("ballot_style_cast", county.styleOf(part, party))
                .set("party_ballot_cast", party)
                .set("party", party);
        draft.set("cast_at", county.plan.at(7, 14).plusMinutes(dice.below(OPEN_MINUTES)));
        draft.set("extended_hours", "no");
    }

    private void name(DraftEnvelope draft) {
        Resident person = draft.person;
        draft.set("last_name", person.last).set("first_name", person.first).set("suffix", person.suffix);
        draft.set("middle_name", person.middle).set("date_of_birth", person.born);
    }

    private static void residence(DraftEnvelope draft) {
        Dwelling home = draft.livesIn;
        draft.set("residence_address_line", home.line()).set("unit", home.unit());
        draft.set("city", home.part().city()).set("zip", home.part().zip());
    }

    private void numbers(DraftEnvelope draft) {
        FileRow roll = draft.person.roll;
        boolean known = !roll.blank("id_last4");
        draft.set("id_last4", known ? roll.get("id_last4") : dice.chance(0.6) ? dice.digits(4) : "");
        if (dice.chance(0.2)) {
            draft.set("drivers_license", roll.get("drivers_license"));
        }
    }

    private void contact(DraftEnvelope draft) {
        Resident person = draft.person;
        if (dice.chance(0.7)) {
            draft.set("phone", "555-01" + dice.digits(2));
        }
        if (dice.chance(0.25)) {
            String box = person.first + "." + person.last.replaceAll("[^A-Za-z]", "");
            draft.set("email", box.toLowerCase(Locale.ROOT) + "@example.org");
        }
        String language = person.roll.get("language");
        draft.set("language", language.isEmpty() ? "en" : language);
    }

    private void table(DraftEnvelope draft) {
        draft.set("id_shown", "yes");
        draft.set("id_kind", dice.pick("drivers_license", "drivers_license", "state_id", "passport", "utility_bill"));
        draft.set("sent_here_by_official", "no").set("statements_ticked", "citizen;resident;not_voted");
        draft.set("voter_signed", "yes").set("official_signed", "yes").set("envelope_condition", "sealed");
    }

    /** Moves the voter to another home in the envelope; the old address and the day are given or left out. */
    public static DraftEnvelope moved(DraftEnvelope draft, Dwelling now, boolean oldGiven, Object movedOn) {
        draft.livesIn = now;
        residence(draft);
        draft.because("moved").set("moved_on", movedOn instanceof LocalDate day ? day : "");
        return draft.set("former_address_line", oldGiven ? draft.person.home.line() : "");
    }
}
