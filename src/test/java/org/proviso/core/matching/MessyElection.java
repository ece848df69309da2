package org.proviso.core.matching;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.proviso.core.Address;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.PersonName;

/**
 * An invented roll and envelopes whose true voters are known, made to be hard: movers, changed and halved surnames,
 * nicknames from a table that is not the project's, slips, blank boxes, and people who merely resemble a voter.
 */
public final class MessyElection {

    public final List<InventedPerson> roll = new ArrayList<>();
    public final List<MatchQuery> envelopes = new ArrayList<>();

    /** Envelope number to voter id; empty for one who is not on the roll. */
    final Map<String, String> truth = new HashMap<>();

    private final Random random;
    private final PenSlips slips;
    private final InventedTown town;

    public MessyElection(long seed, int voters, int envelopeCount) throws IOException {
        random = new Random(seed);
        slips = new PenSlips(random, nicknames());
        town = new InventedTown(random);
        while (roll.size() < voters) {
            addFamily();
        }
        for (int i = 0; i < envelopeCount; i++) {
            addEnvelope("E" + i);
        }
    }

    private void addFamily() {
        InventedPerson person = town.stranger();
        roll.add(person);
        int kind = random.nextInt(100);
        if (kind < 3) {
            roll.add(town.twinOf(person));
        } else if (kind < 7) {
            roll.add(town.childOf(person));
        } else if (kind < 10) {
            roll.add(town.namesakeOf(person));
        } else if (kind < 35) {
            InventedPerson spouse = town.stranger();
            roll.add(spouse.surnamed(person.last()).at(person));
        }
    }

    private void addEnvelope(String number) {
        InventedPerson person = roll.get(random.nextInt(roll.size()));
        int kind = random.nextInt(100);
        String voterId = "";
        if (kind < 70) {
            voterId = person.id();
        } else if (kind < 73) {
            person = town.twinOf(person);
        } else if (kind < 76) {
            person = town.childOf(person);
        } else if (kind < 80) {
            person = town.namesakeOf(person);
        } else {
            person = town.stranger();
        }
        truth.put(number, voterId);
        envelopes.add(written(number, person));
    }

    private MatchQuery written(String number, InventedPerson person) {
        InventedPerson home = slips.in(35) ? person.at(town.stranger()) : person;
        Address residence = new Address(line(home), slips.in(20) ? "" : home.unit(), city(home), zip(home));
        boolean tellsFormer = home != person && slips.in(30);
        Address former = tellsFormer ? new Address(line(person), person.unit(), "", "") : Address.NONE;
        return new MatchQuery(
                new EnvelopeNumber(number),
                name(person),
                "",
                birth(person.born()),
                residence,
                former,
                last4(person.last4()),
                "");
    }

    private PersonName name(InventedPerson person) {
        String last = surname(person);
        String first = person.first();
        if (slips.in(10)) {
            first = slips.nickname(first);
        } else if (slips.in(5)) {
            first = slips.slip(first);
        } else if (slips.in(1)) {
            first = first.substring(0, 1);
        }
        String middle = person.middle();
        if (slips.in(35)) {
            middle = "";
        } else if (slips.in(45) && !middle.isEmpty()) {
            middle = middle.substring(0, 1);
        } else if (slips.in(2) && !middle.isEmpty()) {
            String goesBy = middle;
            middle = first;
            first = goesBy;
        }
        String suffix = slips.in(50) ? "" : person.suffix();
        return slips.in(1) ? new PersonName(first, last, middle, suffix) : new PersonName(last, first, middle, suffix);
    }

    private String surname(InventedPerson person) {
        if (person.female() && slips.in(5)) {
            return slips.in(40) ? person.last() + "-" + town.surname() : town.surname();
        }
        if (slips.in(6)) {
            String once = slips.slip(person.last());
            return slips.in(15) ? slips.slip(once) : once;
        }
        return slips.in(10) ? person.last().toUpperCase(Locale.ROOT) : person.last();
    }

    private @Nullable LocalDate birth(LocalDate born) {
        if (slips.in(3)) {
            return null;
        }
        if (slips.in(4)) {
            String digits = born.toString().replace("-", "");
            String wrong = slips.in(30)
                    ? digits.substring(0, 4) + digits.substring(6) + digits.substring(4, 6)
                    : digits.substring(0, 2) + slips.slipDigits(digits.substring(2));
            return parsed(wrong, born);
        }
        return slips.in(1) ? born.plusDays(random.nextInt(60)) : born;
    }

    private static LocalDate parsed(String digits, LocalDate otherwise) {
        try {
            return LocalDate.of(
                    Integer.parseInt(digits.substring(0, 4)),
                    Integer.parseInt(digits.substring(4, 6)),
                    Integer.parseInt(digits.substring(6)));
        } catch (DateTimeException e) {
            return otherwise;
        }
    }

    private String last4(String number) {
        if (slips.in(12)) {
            return "";
        }
        return slips.in(3) ? slips.in(80) ? slips.slipDigits(number) : town.last4() : number;
    }

    private String line(InventedPerson home) {
        String street = home.street();
        if (slips.in(30)) {
            street = street.replace(" St", " Street").replace(" Ave", " Avenue").replace("N ", "North ");
        }
        if (slips.in(5)) {
            street = slips.slip(street);
        }
        if (slips.in(5)) {
            street = street.substring(0, Math.max(4, street.lastIndexOf(' ')));
        }
        return home.house() + " " + street + (slips.in(15) && !home.unit().isEmpty() ? " " + home.unit() : "");
    }

    private String city(InventedPerson home) {
        return slips.in(10) ? "" : home.city();
    }

    private String zip(InventedPerson home) {
        return slips.in(10) ? "" : home.zip();
    }

    private static Map<String, List<String>> nicknames() throws IOException {
        Path table = Path.of("..", "shared", "data", "names", "nicknames.csv");
        Map<String, List<String>> nicknames = new HashMap<>();
        if (Files.exists(table)) {
            for (String line : Files.readAllLines(table)) {
                String[] cells = line.split(",");
                nicknames.computeIfAbsent(cells[0], name -> new ArrayList<>()).add(cells[2]);
            }
        }
        return nicknames;
    }
}
