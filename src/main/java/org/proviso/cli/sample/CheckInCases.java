package org.proviso.cli.sample;

import java.time.LocalDateTime;

/** Voters whom a poll book shows at another location. */
final class CheckInCases {

    private final Desk desk;

    CheckInCases(Desk desk) {
        this.desk = desk;
    }

    void reallyVoted(int count) {
        desk.times(count, () -> {
            Draft draft = start("checked_in_elsewhere_voted", Outcome.REJECT);
            String there = desk.otherLocation(draft.get("voting_location"));
            desk.checkIn(draft.person, there, before(draft), "regular", "yes");
            draft.note("the poll-book signature at " + there + " is the voter's");
        });
    }

    /** The clerk there ticked this voter's line for somebody of the same name. */
    void wrongLineTicked(int count) {
        desk.times(count, () -> {
            Draft draft = start("checked_in_elsewhere_wrong_line", Outcome.COUNT);
            Person namesake = namesake(draft.person);
            String there = namesake.home.part().location();
            desk.checkIn(draft.person, there, before(draft), "regular", "yes");
            draft.note("the poll-book signature at " + there + " is of voter " + namesake.voterId());
            draft.only(Ground.ADDRESS);
        });
    }

    private Person namesake(Person of) {
        Person other = desk.take(candidate -> Desk.ordinary(candidate)
                && candidate.woman == of.woman
                && !candidate.home.part().location().equals(of.home.part().location()));
        other.last = of.last;
        other.first = of.first;
        other.middle = of.middle.startsWith("A") ? "R" : "A";
        Person.alike(of, Person.Kin.LIKE_NAME, other, Person.Kin.LIKE_NAME);
        return other;
    }

    void cancelled(int count) {
        desk.times(count, () -> {
            Draft draft = start("check_in_cancelled", Outcome.COUNT);
            LocalDateTime at = before(draft);
            desk.checkIn(draft.person, desk.otherLocation(draft.get("voting_location")), at, "regular", "no")
                    .set("cancelled_at", at.plusMinutes(desk.dice.between(2, 9)));
        });
    }

    private Draft start(String scenario, Outcome outcome) {
        return desk.ordinary(scenario, outcome)
                .because("already_checked_in")
                .set("cast_at", desk.plan.at(desk.dice.between(14, 19), desk.dice.between(2, 57)));
    }

    private LocalDateTime before(Draft draft) {
        return draft.castAt().minusMinutes(desk.dice.between(60, 380));
    }
}
