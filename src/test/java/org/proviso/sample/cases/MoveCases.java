package org.proviso.sample.cases;

import java.time.LocalDate;
import org.proviso.sample.county.CountyPart;
import org.proviso.sample.county.Dwelling;
import org.proviso.sample.county.Resident;
import org.proviso.sample.envelope.AffirmationForm;
import org.proviso.sample.envelope.DraftEnvelope;
import org.proviso.sample.envelope.EnvelopeDesk;
import org.proviso.sample.envelope.Identifier;
import org.proviso.sample.envelope.TrueOutcome;

/** Voters who moved within the county: before the deadline the new home decides the ballot, after it the old one. */
final class MoveCases {

    private final EnvelopeDesk desk;

    MoveCases(EnvelopeDesk desk) {
        this.desk = desk;
    }

    void early(int count) {
        desk.times(count, () -> {
            DraftEnvelope draft = moved("moved_early", TrueOutcome.COUNT, elsewhere(), early());
            atNewHome(draft);
        });
    }

    void late(int count) {
        desk.times(
                count,
                () -> moved("moved_late", TrueOutcome.COUNT, elsewhere(), late())
                        .note("moved after the deadline: the registered address decides"));
    }

    void dayNotGiven(int count) {
        desk.times(count, () -> {
            DraftEnvelope draft = moved("moved_day_not_given", TrueOutcome.COUNT, elsewhere(), "");
            draft.note("day of the move not given: either ballot is right");
            if (desk.dice.chance(0.5)) {
                atNewHome(draft);
            }
        });
    }

    void withinPart(int count) {
        desk.times(count, () -> {
            Resident person = desk.take(EnvelopeDesk::ordinary);
            Destination at = new Destination(person, desk.county.housing.in(person.home.part()));
            moved("moved_within_precinct", TrueOutcome.COUNT, at, desk.dice.chance(0.5) ? early() : late());
        });
    }

    void earlyWithOldBallot(int count) {
        desk.times(count, () -> {
            DraftEnvelope draft = moved("moved_early_old_style", TrueOutcome.PART, elsewhere(), early());
            WrongBallotCases.inPart(desk, draft, desk.county.styleOf(draft.livesIn.part(), draft.person.party()));
        });
    }

    void lateWithNewBallot(int count) {
        desk.times(count, () -> {
            DraftEnvelope draft = moved("moved_late_new_style", TrueOutcome.PART, elsewhere(), late());
            String right = draft.get("ballot_style_cast");
            atNewHome(draft);
            WrongBallotCases.inPart(desk, draft, right);
        });
    }

    private record Destination(Resident person, Dwelling home) {}

    /** A voter and a new home whose ballot and the old one's each hold a contest the other lacks. */
    private Destination elsewhere() {
        Resident person = desk.take(EnvelopeDesk::ordinary);
        String old = desk.county.styleOf(person.home.part(), person.party());
        CountyPart part = desk.dice.pick(desk.county.parts.stream()
                .filter(other -> {
                    String style = desk.county.styleOf(other, person.party());
                    return desk.county.ballots.exceeds(style, old) && desk.county.ballots.exceeds(old, style);
                })
                .toList());
        return new Destination(person, desk.county.housing.in(part));
    }

    private DraftEnvelope moved(String scenario, TrueOutcome outcome, Destination to, Object movedOn) {
        DraftEnvelope draft = desk.of(to.person(), scenario, outcome);
        AffirmationForm.moved(draft, to.home(), desk.dice.chance(0.6), movedOn);
        return draft.only(Identifier.NAME, Identifier.BIRTH);
    }

    private void atNewHome(DraftEnvelope draft) {
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
