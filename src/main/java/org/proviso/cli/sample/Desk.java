package org.proviso.cli.sample;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** Where envelopes are made: it picks people who are not yet behind one, and keeps the records beside them. */
final class Desk {

    private static final LocalDate LONG_AGO = LocalDate.of(2023, 1, 1);

    final Town town;
    final Plan plan;
    final Dice dice;
    final Families families;
    final List<Draft> drafts = new ArrayList<>();
    final List<Row> mail = new ArrayList<>();
    final List<Row> checkIns = new ArrayList<>();
    final List<Row> elsewhere = new ArrayList<>();
    private final AffirmationForm form;
    private final List<Person> queue;

    Desk(Town town, Families families, Dice dice) {
        this.town = town;
        this.plan = town.plan;
        this.families = families;
        this.dice = dice;
        this.form = new AffirmationForm(town, dice.apart("form"));
        this.queue = dice.shuffled(town.roll);
    }

    /** An envelope of someone on the roll in good order, cast at the right place with the right style. */
    Draft ordinary(String scenario, Outcome outcome) {
        return of(take(Desk::ordinary), scenario, outcome);
    }

    Draft of(Person person, String scenario, Outcome outcome) {
        person.used = true;
        return fill(new Draft(person, true, scenario, outcome));
    }

    /** An envelope of someone who is not on the roll. */
    Draft stranger(Person person, String scenario, Outcome outcome) {
        return fill(new Draft(person, false, scenario, outcome));
    }

    void times(int count, Runnable scenario) {
        for (int i = 0; i < count; i++) {
            scenario.run();
        }
    }

    private Draft fill(Draft draft) {
        form.fill(draft);
        drafts.add(draft);
        return draft;
    }

    Person take(Predicate<Person> test) {
        Person taken = queue.stream()
                .filter(person -> !person.used && test.test(person))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("nobody is left on the roll for this scenario"));
        taken.used = true;
        return taken;
    }

    /** Registered long ago, active, with nothing about them that a scenario would have to explain. */
    static boolean ordinary(Person person) {
        Row roll = person.roll;
        return person.kin == null
                && roll.get("status").equals("active")
                && roll.get("confidential").equals("no")
                && roll.get("date_of_birth").equals(person.born.toString())
                && LocalDate.parse(roll.get("registration_date")).isBefore(LONG_AGO);
    }

    /** Casts the envelope at that part's location, as a voter of that part. */
    Draft castAs(Draft draft, Part part, String party) {
        draft.set("voting_location", part.location()).set("precinct_cast", part.precinct());
        return draft.set("ballot_style_cast", town.styleOf(part, party));
    }

    /** A mail ballot's record; its serial number is given when all are known. */
    void mail(Person person, LocalDate issued, String state, Object stateOn) {
        person.used = true;
        mail.add(new Row(Columns.MAIL)
                .set("voter_id", person.voterId())
                .set("issued_on", issued)
                .set("state", state)
                .set("state_on", stateOn));
    }

    Row checkIn(Person person, String location, LocalDateTime at, String kind, String issued) {
        Row row = new Row(Columns.CHECK_INS)
                .set("voter_id", person.voterId())
                .set("voting_location", location)
                .set("at", at)
                .set("kind", kind)
                .set("ballot_issued", issued);
        checkIns.add(row);
        return row;
    }

    String otherLocation(String than) {
        return dice.pick(town.locations().stream()
                .filter(location -> !location.equals(than))
                .toList());
    }
}
