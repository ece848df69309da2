package org.proviso.cli.sample;

import java.time.LocalDate;

/** Voters who moved within the county: before the deadline the new home decides the ballot, after it the old one. */
final class MoveCases {

    private final Desk desk;

    MoveCases(Desk desk) {
        this.desk = desk;
    }

    void early(int count) {
        desk.times(count, () -> {
            Draft draft = moved("moved_early", Outcome.COUNT, elsewhere(), early());
            atNewHome(draft);
        });
    }

    void late(int count) {
        desk.times(
                count,
                () -> moved("moved_late", Outcome.COUNT, elsewhere(), late())
                        .note("moved after the deadline: the registered address decides"));
    }

    void dayNotGiven(int count) {
        desk.times(count, () -> {
            Draft draft = moved("moved_day_not_given", Outcome.COUNT, elsewhere(), "");
            draft.note("day of the move not given: either ballot is right");
            if (desk.dice.chance(0.5)) {
                atNewHome(draft);
            }
        });
    }

    void withinPart(int count) {
        desk.times(count, () -> {
            Person person = desk.take(Desk::ordinary);
            Destination at = new Destination(person, desk.town.housing.in(person.home.part()));
            moved("moved_within_precinct", Outcome.COUNT, at, desk.dice.chance(0.5) ? early() : late());
        });
    }

    void earlyWithOldBallot(int count) {
        desk.times(count, () -> {
            Draft draft = moved("moved_early_old_style", Outcome.PART, elsewhere(), early());
            WrongBallots.inPart(desk, draft, desk.town.styleOf(draft.livesIn.part(), draft.person.party()));
        });
    }

    void lateWithNewBallot(int count) {
        desk.times(count, () -> {
            Draft draft = moved("moved_late_new_style", Outcome.PART, elsewhere(), late());
            String right = draft.get("ballot_style_cast");
            atNewHome(draft);
            WrongBallots.inPart(desk, draft, right);
        });
    }

    private record Destination(Person person, Dwelling home) {}

    /** A voter and a new home whose ballot and the old one's each hold a contest the other lacks. */
    private Destination elsewhere() {
        Person person = desk.take(Desk::ordinary);
        String old = desk.town.styleOf(person.home.part(), person.party());
        Part part = desk.dice.pick(desk.town.parts.stream()
                .filter(other -> {
                    String style = desk.town.styleOf(other, person.party());
                    return desk.town.ballots.exceeds(style, old) && desk.town.ballots.exceeds(old, style);
                })
                .toList());
        return new Destination(person, desk.town.housing.in(part));
    }

    private Draft moved(String scenario, Outcome outcome, Destination to, Object movedOn) {
        Draft draft = desk.of(to.person(), scenario, outcome);
        AffirmationForm.moved(draft, to.home(), desk.dice.chance(0.6), movedOn);
        return draft.only(Ground.NAME, Ground.BIRTH);
    }

    private void atNewHome(Draft draft) {
        desk.castAs(draft, draft.livesIn.part(), draft.person.party());
    }

    private LocalDate early() {
        LocalDate deadline = desk.plan.lastDayInPerson();
        return desk.dice.chance(0.15) ? deadline : desk.dice.day(deadline.minusDays(400), deadline.minusDays(1));
    }

    private LocalDate late() {
        return desk.dice.day(
                desk.plan.lastDayInPerson().plusDays(1), desk.plan.date().minusDays(1));
    }
}
