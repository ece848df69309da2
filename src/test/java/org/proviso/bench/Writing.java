package org.proviso.bench;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;

/** How a person fills in the affirmation, and how it is keyed. */
final class Writing {

    private static final Map<String, String> ABBREVIATED = Map.of(
            "Street",
            "St",
            "Avenue",
            "Ave",
            "Road",
            "Rd",
            "Drive",
            "Dr",
            "Lane",
            "Ln",
            "Court",
            "Ct",
            "Boulevard",
            "Blvd",
            "North",
            "N",
            "South",
            "S",
            "Saint",
            "St.");

    private final Families families;
    private final Slips slips;
    private final SplittableRandom random;
    private final Map<String, List<String>> nicknames;

    Writing(Families families, SplittableRandom random, Map<String, List<String>> nicknames) {
        this.families = families;
        this.random = random;
        this.nicknames = nicknames;
        slips = new Slips(random);
    }

    /** One keyed envelope: its cells after the number, and what happened to it. */
    record Written(List<String> cells, Set<Kind> kinds) {}

    Written envelope(Person person, boolean onRoll) {
        Set<Kind> kinds = EnumSet.noneOf(Kind.class);
        String[] name = name(person, kinds);
        LocalDate born = born(person.born(), kinds);
        boolean moves = onRoll ? in(30) : in(10);
        Person.Home home = moves ? families.home() : person.home();
        if (moves) {
            kinds.add(Kind.MOVED);
        }
        String line = line(home, kinds);
        String unit = home.unit().isEmpty() || in(15) ? "" : unit(home.unit());
        boolean inLine = !unit.isEmpty() && in(25);
        String former = moves && in(25) ? line(person.home(), kinds) : "";
        List<String> cells = List.of(
                shout(name[0]),
                shout(name[1]),
                shout(name[2]),
                name[3],
                Slips.cell(born),
                inLine ? line + " " + unit : line,
                inLine ? "" : unit,
                in(6) ? "" : home.city(),
                in(6) ? "" : home.zip(),
                former,
                last4(person.last4(), kinds));
        return new Written(cells, kinds);
    }

    private boolean in(double percent) {
        return random.nextDouble() * 100 < percent;
    }

    private String shout(String text) {
        return in(12) ? text.toUpperCase(Locale.ROOT) : text;
    }

    /** Last, first, middle, suffix. */
    private String[] name(Person person, Set<Kind> kinds) {
        String last = surname(person, kinds);
        String[] givens = givens(person, kinds);
        String suffix = in(person.suffix().isEmpty() ? 0 : 45) ? "" : person.suffix();
        if (in(0.8)) {
            kinds.add(Kind.EXCHANGED);
            return new String[] {givens[0], last, givens[1], suffix};
        }
        return new String[] {last, givens[0], givens[1], suffix};
    }

    private String surname(Person person, Set<Kind> kinds) {
        if (person.female() && in(5)) {
            kinds.add(Kind.CHANGED_SURNAME);
            String other = families.surname();
            return in(30) ? person.last() + (in(50) ? "-" : " ") + other : other;
        }
        if (in(6)) {
            kinds.add(Kind.SURNAME_SLIP);
            return slips.word(in(10) ? slips.word(person.last()) : person.last());
        }
        return person.last();
    }

    private String[] givens(Person person, Set<Kind> kinds) {
        String first = person.first();
        String middle = in(40) ? "" : in(55) && !person.middle().isEmpty() ? initial(person.middle()) : person.middle();
        if (in(1.5) && !person.middle().isEmpty()) {
            kinds.add(Kind.MIDDLE_NAME);
            return new String[] {person.middle(), in(50) ? "" : first};
        }
        List<String> shortForms = nicknames.getOrDefault(first, List.of());
        if (in(9) && !shortForms.isEmpty()) {
            kinds.add(Kind.NICKNAME);
            return new String[] {shortForms.get(random.nextInt(shortForms.size())), middle};
        }
        if (in(4)) {
            kinds.add(Kind.GIVEN_SLIP);
            return new String[] {slips.word(first), middle};
        }
        if (in(1)) {
            kinds.add(Kind.INITIAL);
            return new String[] {initial(first), middle};
        }
        return new String[] {first, middle};
    }

    private static String initial(String name) {
        return name.substring(0, 1);
    }

    private @Nullable LocalDate born(LocalDate born, Set<Kind> kinds) {
        double kind = random.nextDouble() * 100;
        if (kind < 3) {
            kinds.add(Kind.NO_BIRTH_DATE);
            return null;
        }
        LocalDate written = kind < 5.5
                ? slips.day(born)
                : kind < 7 ? slips.year(born) : kind < 7.8 ? slips.dayForMonth(born) : born;
        if (!written.equals(born)) {
            kinds.add(kind < 5.5 ? Kind.DAY_SLIP : kind < 7 ? Kind.YEAR_SLIP : Kind.DAY_FOR_MONTH);
        }
        return written;
    }

    private String last4(String last4, Set<Kind> kinds) {
        double kind = random.nextDouble() * 100;
        if (kind < 12) {
            kinds.add(Kind.NO_LAST4);
            return "";
        }
        if (kind < 14.5) {
            kinds.add(Kind.LAST4_SLIP);
            return slips.digits(last4);
        }
        if (kind < 15) {
            kinds.add(Kind.LAST4_OTHER);
            return families.last4();
        }
        return last4;
    }

    private String line(Person.Home home, Set<Kind> kinds) {
        StringBuilder line = new StringBuilder();
        if (in(1.5)) {
            kinds.add(Kind.ADDRESS_SLIP);
            line.append(slips.digits(String.valueOf(home.house() + 10)));
        } else {
            line.append(home.house());
        }
        boolean slip = in(4);
        String[] words = home.street().split(" ");
        int dropped = words.length > 1 && in(5) ? words.length - 1 : -1;
        for (int i = 0; i < words.length; i++) {
            String word = slip && words[i].length() > 3 ? slips.word(words[i]) : words[i];
            slip &= word.equals(words[i]);
            kinds.addAll(word.equals(words[i]) ? Set.of() : Set.of(Kind.ADDRESS_SLIP));
            line.append(i == dropped ? "" : " " + (in(60) ? ABBREVIATED.getOrDefault(word, word) : word));
        }
        return line.toString();
    }

    private String unit(String unit) {
        return in(40) ? unit.replace("Apt ", in(50) ? "#" : "Unit ") : unit;
    }
}
