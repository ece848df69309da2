package org.proviso.sample.envelope;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.List;
import org.proviso.sample.county.Dice;
import org.proviso.sample.county.FileRow;
import org.proviso.sample.county.Registrar;
import org.proviso.sample.county.Resident;

/** The records of everyone who has no envelope: mail ballots and check-ins of an ordinary election. */
public final class OrdinaryVoters {

    private static final int FIRST_SERIAL = 200_001;

    private final EnvelopeDesk desk;
    private final Dice dice;
    private final List<Resident> others;
    private int next;

    public OrdinaryVoters(EnvelopeDesk desk, Dice dice) {
        this.desk = desk;
        this.dice = dice;
        this.others = dice.shuffled(desk.county.roll);
    }

    public void fill() {
        provisionalCheckIns();
        while (desk.mail.size() < desk.plan.mailBallots()) {
            mailBallot(unused());
        }
        serials();
        while (desk.checkIns.size() < desk.plan.checkIns()) {
            checkIn(unused());
        }
        desk.checkIns.sort(
                Comparator.comparing((FileRow row) -> row.get("at")).thenComparing(row -> row.get("voter_id")));
    }

    /** Where the poll book was used for the envelope itself, it shows a check-in of that kind. */
    private void provisionalCheckIns() {
        for (DraftEnvelope draft : desk.drafts) {
            if (draft.onRoll && draft.checkedIn && dice.chance(0.7)) {
                LocalDateTime at = draft.castAt().minusMinutes(dice.between(3, 12));
                desk.checkIn(draft.person, draft.get("voting_location"), at, "provisional", "yes");
            }
        }
    }

    private Resident unused() {
        while (true) {
            Resident person = others.get(next++);
            String status = person.roll.get("status");
            if (!person.used && (status.equals("active") || (status.equals("inactive") && dice.chance(0.2)))) {
                return person;
            }
        }
    }

    private void mailBallot(Resident person) {
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
                Comparator.comparing((FileRow row) -> row.get("issued_on")).thenComparing(row -> row.get("voter_id")));
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

    private void checkIn(Resident person) {
        LocalDateTime at = desk.plan.at(dice.between(7, 19), dice.between(0, 59));
        person.used = true;
        desk.checkIn(person, person.home.part().location(), at, "regular", "yes");
    }
}
