package org.proviso.sample.envelope;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.proviso.sample.county.County;
import org.proviso.sample.county.CountyPart;
import org.proviso.sample.county.Dice;
import org.proviso.sample.county.ElectionPlan;
import org.proviso.sample.county.FileColumns;
import org.proviso.sample.county.FileRow;
import org.proviso.sample.county.Households;
import org.proviso.sample.county.Resident;

/** Where envelopes are made: it picks people who are not yet behind one, and keeps the records beside them. */
public final class EnvelopeDesk {

    private static final LocalDate LONG_AGO = LocalDate.of(2023, 1, 1);

    public final County county;
    public final ElectionPlan plan;
    public final Dice dice;
    public final Households families;
    public final List<DraftEnvelope> drafts = new ArrayList<>();
    public final List<FileRow> mail = new ArrayList<>();
    public final List<FileRow> checkIns = new ArrayList<>();
    public final List<FileRow> elsewhere = new ArrayList<>();
    private final AffirmationForm form;
    private final List<Resident> queue;

    public EnvelopeDesk(County county, Households families, Dice dice) {
        this.county = county;
        this.plan = county.plan;
        this.families = families;
        this.dice = dice;
        this.form = new AffirmationForm(county, dice.apart("form"));
        this.queue = dice.shuffled(county.roll);
    }

    /** An envelope of someone on the roll in good order, cast at the right place with the right style. */
    public DraftEnvelope ordinary(String scenario, TrueOutcome outcome) {
        return of(take(EnvelopeDesk::ordinary), scenario, outcome);
    }

    public DraftEnvelope of(Resident person, String scenario, TrueOutcome outcome) {
        person.used = true;
        return fill(new DraftEnvelope(person, true, scenario, outcome));
    }

    /** An envelope of someone who is not on the roll. */
    public DraftEnvelope stranger(Resident person, String scenario, TrueOutcome outcome) {
        return fill(new DraftEnvelope(person, false, scenario, outcome));
    }

    public void times(int count, Runnable scenario) {
        for (int i = 0; i < count; i++) {
            scenario.run();
        }
    }

    private DraftEnvelope fill(DraftEnvelope draft) {
        form.fill(draft);
        drafts.add(draft);
        return draft;
    }

    public Resident take(Predicate<Resident> test) {
        Resident taken = queue.stream()
                .filter(person -> !person.used && test.test(person))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("nobody is left on the roll for this scenario"));
        taken.used = true;
        return taken;
    }

    /** Registered long ago, active, with nothing about them that a scenario would have to explain. */
    public static boolean ordinary(Resident person) {
        FileRow roll = person.roll;
        return person.kin == null
                && roll.get("status").equals("active")
                && roll.get("confidential").equals("no")
                && roll.get("date_of_birth").equals(person.born.toString())
                && LocalDate.parse(roll.get("registration_date")).isBefore(LONG_AGO);
    }

    /** Casts the envelope at that part's location, as a voter of that part. */
    public DraftEnvelope castAs(DraftEnvelope draft, CountyPart part, String party) {
        draft.set("voting_location", part.location()).set("precinct_cast", part.precinct());
        return draft.set("ballot_style_cast", county.styleOf(part, party));
    }

    /** A mail ballot's record; its serial number is given when all are known. */
    public void mail(Resident person, LocalDate issued, String state, Object stateOn) {
        person.used = true;
        mail.add(new FileRow(FileColumns.MAIL)
                .set("voter_id", person.voterId())
                .set("issued_on", issued)
                .set("state", state)
                .set("state_on", stateOn));
    }

    public FileRow checkIn(Resident person, String location, LocalDateTime at, String kind, String issued) {
        FileRow row = new FileRow(FileColumns.CHECK_INS)
                .set("voter_id", person.voterId())
                .set("voting_location", location)
                .set("at", at)
                .set("kind", kind)
                .set("ballot_issued", issued);
        checkIns.add(row);
        return row;
    }

    public String otherLocation(String than) {
        return dice.pick(county.locations().stream()
                .filter(location -> !location.equals(than))
                .toList());
    }
}
