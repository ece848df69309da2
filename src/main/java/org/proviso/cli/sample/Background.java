package org.proviso.cli.sample;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.List;

/** The records of everyone who has no envelope: mail ballots and check-ins of an ordinary election. */
final class Background {

    private static final int FIRST_SERIAL = 200_001;

    private final Desk desk;
    private final Dice dice;
    private final List<Person> others;
    private int next;

    Background(Desk desk, Dice dice) {
        this.desk = desk;
        this.dice = dice;
        this.others = dice.shuffled(desk.town.roll);
    }

    void fill() {
        provisionalCheckIns();
        while (desk.mail.size() < desk.plan.mailBallots()) {
            mailBallot(unused());
        }
        serials();
        while (desk.checkIns.size() < desk.plan.checkIns()) {
            checkIn(unused());
        }
        desk.checkIns.sort(Comparator.comparing((Row row) -> row.get("at")).thenComparing(row -> row.get("voter_id")));
    }

    /** Where the poll book was used for the envelope itself, it shows a check-in of that kind. */
    private void provisionalCheckIns() {
        for (Draft draft : desk.drafts) {
            if (draft.onRoll && draft.checkedIn && dice.chance(0.7)) {
                LocalDateTime at = draft.castAt().minusMinutes(dice.between(3, 12));
                desk.checkIn(draft.person, draft.get("voting_location"), at, "provisional", "yes");
            }
        }
    }

    private Person unused() {
        while (true) {
            Person person = others.get(next++);
            String status = person.roll.get("status");
            if (!person.used && (status.equals("active") || (status.equals("inactive") && dice.chance(0.2)))) {
                return person;
            }
        }
    }

    private void mailBallot(Person person) {
        LocalDate day = desk.plan.date();
        LocalDate issued = Registrar.onADayOf("mail", dice.day(day.minusDays(45), day.minusDays(10)));
        if (dice.chance(0.02) && desk.mail.size() + 1 < desk.plan.mailBallots()) {
            desk.mail(person, issued.minusDays(8), "void", issued);
        }
        String state = state(dice.below(100));
        LocalDate on = switch (state) {
            case "outstanding" -> issued;
            case "late" -> day.plusDays(1);
            case "returned", "surrendered" -> day;
            default -> dice.day(issued.plusDays(4), day.minusDays(1));
        };
        desk.mail(person, issued, state, on);
        if (state.equals("surrendered")) {
            checkIn(person);
        }
    }

    /** Serial numbers follow the order of issue, whoever the ballot went to. */
    private void serials() {
        desk.mail.sort(
                Comparator.comparing((Row row) -> row.get("issued_on")).thenComparing(row -> row.get("voter_id")));
        for (int i = 0; i < desk.mail.size(); i++) {
            desk.mail.get(i).set("ballot_serial", "M" + (FIRST_SERIAL + i));
        }
    }

    private static String state(int percent) {
        if (percent < 68) {
            return "accepted";
        }
        if (percent < 88) {
            return "outstanding";
        }
        String[] rare = {
            "returned",
            "returned",
            "returned",
            "surrendered",
            "surrendered",
            "surrendered",
            "rejected",
            "rejected",
            "late",
            "void",
            "undeliverable",
            "cure_pending"
        };
        return rare[percent - 88];
    }

    private void checkIn(Person person) {
        LocalDateTime at = desk.plan.at(dice.between(7, 19), dice.between(0, 59));
        person.used = true;
        desk.checkIn(person, person.home.part().location(), at, "regular", "yes");
    }
}
