package org.proviso.sample.county;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;

/** Fills the registration columns of the roll: when and how people registered, and where they stand now. */
public final class Registrar {

    private static final List<LocalDate> ELECTIONS = List.of(
            LocalDate.of(2024, 11, 5),
            LocalDate.of(2024, 8, 6),
            LocalDate.of(2022, 11, 8),
            LocalDate.of(2020, 11, 3),
            LocalDate.of(2018, 11, 6),
            LocalDate.of(2016, 11, 8),
            LocalDate.of(2012, 11, 6));
    private static final LocalDate SETTLED = LocalDate.of(2026, 6, 12);
    private static final LocalDate ONLINE_SINCE = LocalDate.of(2012, 3, 1);

    private final ElectionPlan plan;
    private final Dice dice;

    public Registrar(ElectionPlan plan, Dice dice) {
        this.plan = plan;
        this.dice = dice;
    }

    public void register(List<Resident> people) {
        TreeSet<Integer> numbers = new TreeSet<>();
        while (numbers.size() < people.size()) {
            numbers.add(dice.between(1_000_000, 9_999_999));
        }
        List<Integer> mixed = dice.shuffled(List.copyOf(numbers));
        for (int i = 0; i < people.size(); i++) {
            people.get(i).roll.set("voter_id", "T" + mixed.get(i));
            register(people.get(i));
        }
    }

    private void register(Resident person) {
        FileRow roll = person.roll;
        LocalDate drawn = registeredOn(person);
        String channel = channel(drawn);
        LocalDate on = onADayOf(channel, drawn);
        roll.set("registration_date", on).set("registration_channel", channel);
        if (on.getYear() >= 1992) {
            roll.set("received_on", on.plusDays(delay(channel)));
        }
        numbers(person, on, channel);
        extras(person, on);
        status(person, on);
    }

    private LocalDate registeredOn(Resident person) {
        LocalDate adult = person.born.plusYears(18);
        LocalDate first =
                adult.isBefore(plan.date().minusYears(40)) ? plan.date().minusYears(40) : adult;
        LocalDate earliest = first.isAfter(SETTLED) ? SETTLED.minusDays(40) : first;
        if (dice.chance(0.03)) {
            return dice.day(SETTLED, plan.lastDayInPerson().plusDays(6));
        }
        return dice.chance(0.25) ? dice.day(earliest, SETTLED) : dice.day(later(earliest), SETTLED);
    }

    /** Counters and post offices are closed on weekends: what would fall there happened on the Friday before. */
    public static LocalDate onADayOf(String channel, LocalDate drawn) {
        boolean anyDay = channel.equals("online") || channel.equals("drive");
        int pastFriday = drawn.getDayOfWeek().getValue() - DayOfWeek.FRIDAY.getValue();
        return anyDay || pastFriday <= 0 ? drawn : drawn.minusDays(pastFriday);
    }

    private LocalDate later(LocalDate earliest) {
        LocalDate recent = SETTLED.minusYears(12);
        return earliest.isAfter(recent) ? earliest : recent;
    }

    private String channel(LocalDate on) {
        if (on.isAfter(ONLINE_SINCE)) {
            return dice.pick(
                    "motor_vehicle",
                    "motor_vehicle",
                    "motor_vehicle",
                    "online",
                    "online",
                    "mail",
                    "in_person",
                    "drive",
                    "agency");
        }
        return dice.pick("in_person", "mail", "motor_vehicle", "drive");
    }

    /** Days from the act of the applicant to the arrival of the paper. */
    private int delay(String channel) {
        return switch (channel) {
            case "mail", "drive", "agency" -> dice.between(1, 6);
            case "motor_vehicle" -> dice.between(0, 3);
            default -> 0;
        };
    }

    private void numbers(Resident person, LocalDate on, String channel) {
        if (dice.chance(0.88)) {
            person.roll.set("id_last4", dice.digits(4));
        }
        if (dice.chance(0.7)) {
            person.roll.set("drivers_license", person.last.substring(0, 1).toUpperCase(Locale.ROOT) + dice.digits(8));
        }
        boolean recent = on.getYear() >= 2004;
        person.roll.set("number_matched", recent ? (dice.chance(0.97) ? "yes" : "no") : "");
        boolean firstByMail = channel.equals("mail") && on.getYear() == 2026;
        person.roll.set("id_required", firstByMail ? "yes" : "no").set("entitlement", "full");
    }

    private void extras(Resident person, LocalDate on) {
        FileRow roll = person.roll;
        roll.set("confidential", "no").set("language", dice.chance(0.04) ? "es" : "en");
        if (dice.chance(0.006)) {
            roll.set("confidential", "yes")
                    .set("mail_address", "PO Box " + dice.between(10, 980) + ", Millbrook 49871");
        } else if (dice.chance(0.03)) {
            roll.set("mail_address", "PO Box " + dice.between(10, 980));
        }
        if (on.getYear() < 1996 && dice.chance(0.08)) {
            roll.set("date_of_birth", "1900-01-01");
        }
        if (plan.primary()) {
            String party = dice.pick("Harbor", "Harbor", "Granite", "Granite", "");
            roll.set("party", party).set("party_since", party.isEmpty() ? "" : dice.day(on, SETTLED));
        }
    }

    private void status(Resident person, LocalDate on) {
        FileRow roll = person.roll.set("status", "active");
        double kind = dice.fraction();
        if (kind < 0.09 && on.isBefore(LocalDate.of(2021, 1, 1))) {
            LocalDate notice = dice.day(LocalDate.of(2023, 1, 10), LocalDate.of(2025, 6, 30));
            inactive(roll, notice);
        } else if (kind > 0.97) {
            String reason = dice.pick("moved_out_of_state", "moved_out_of_county", "requested", "duplicate");
            roll.set("status", "cancelled").set("status_reason", reason);
            roll.set("status_on", dice.day(on, SETTLED));
        } else if (on.getYear() == 2026 && dice.chance(0.1)) {
            roll.set("status", "pending")
                    .set("status_reason", "number_not_matched")
                    .set("number_matched", "no");
            roll.set("status_on", on.plusDays(4));
        }
        lastVoted(roll, on);
    }

    public static void inactive(FileRow roll, LocalDate notice) {
        roll.set("status", "inactive").set("status_reason", "mail_returned");
        roll.set("confirmation_sent_on", notice).set("status_on", notice.plusDays(45));
    }

    private void lastVoted(FileRow roll, LocalDate on) {
        boolean inactive = roll.get("status").equals("inactive");
        int newest = inactive ? 3 : 0;
        List<LocalDate> since = ELECTIONS.subList(newest, ELECTIONS.size()).stream()
                .filter(day -> day.isAfter(on))
                .toList();
        if (!since.isEmpty() && dice.chance(0.75)) {
            roll.set("last_voted_on", since.get(dice.chance(0.6) ? 0 : dice.below(since.size())));
        }
    }
}
