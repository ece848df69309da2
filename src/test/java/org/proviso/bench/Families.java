package org.proviso.bench;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Makes households one after another: couples, grown children, twins, fathers and sons of one name, flat mates. */
final class Families {

    private static final LocalDate YOUNGEST = LocalDate.of(2008, 11, 3);

    private final SplittableRandom random;
    private final NameTables names;
    private final Town town;
    private int count;

    Families(SplittableRandom random, NameTables names, Town town) {
        this.random = random;
        this.names = names;
        this.town = town;
    }

    boolean in(double percent) {
        return random.nextDouble() * 100 < percent;
    }

    /** The voters of one household. */
    List<Person> household() {
        List<Person> members = new ArrayList<>();
        Person head = stranger();
        members.add(head);
        if (in(55)) {
            Person partner = partnerOf(head);
            members.add(partner);
            for (int children = random.nextInt(3); children > 0 && in(45); children--) {
                addChild(members, head);
            }
        } else if (in(15)) {
            members.add(stranger().at(head.home()));
        }
        return members;
    }

    private void addChild(List<Person> members, Person head) {
        Person child = in(20) ? childWithNameOf(head) : childOf(head);
        if (!child.born().isAfter(YOUNGEST)) {
            members.add(child);
            if (in(6)) {
                members.add(twinOf(child).numbered(nextId()));
            }
        }
    }

    Person stranger() {
        boolean female = random.nextInt(100) < 52;
        LocalDate born = YOUNGEST.minusDays(random.nextInt(in(85) ? 19_000 : 27_500));
        return new Person(
                nextId(),
                surname(),
                given(female),
                in(20) ? "" : given(female),
                "",
                female,
                born,
                town.home(),
                last4());
    }

    private Person partnerOf(Person head) {
        Person other = stranger();
        LocalDate born = head.born().plusDays(random.nextInt(3_000) - 1_500);
        LocalDate adult = born.isAfter(YOUNGEST) ? YOUNGEST : born;
        return new Person(
                other.id(),
                in(72) ? head.last() : other.last(),
                given(!head.female()),
                other.middle(),
                "",
                !head.female(),
                adult,
                head.home(),
                other.last4());
    }

    /** A grown child in the house; the surname is the parent's. */
    Person childOf(Person parent) {
        boolean female = random.nextBoolean();
        return new Person(
                nextId(),
                parent.last(),
                given(female),
                in(20) ? "" : given(female),
                "",
                female,
                parent.born().plusDays(6_900 + random.nextInt(6_000)),
                parent.home(),
                last4());
    }

    /** Named after the parent; two in three carry a mark. */
    Person childWithNameOf(Person parent) {
        String middle = in(75) ? parent.middle() : given(parent.female());
        return childOf(parent)
                .named(parent.first(), middle, in(66) ? in(70) ? "Jr" : "II" : "")
                .numbered(nextId());
    }

    /** The same surname, day and home; of the same sex two times in three, with the same initial one time in five. */
    Person twinOf(Person person) {
        boolean female = in(67) ? person.female() : !person.female();
        boolean alike = in(20);
        String first = given(female);
        for (int tries = 0;
                tries < 300 && (first.equals(person.first()) || alike != sameInitial(first, person));
                tries++) {
            first = given(female);
        }
        return new Person(
                "",
                person.last(),
                first,
                in(20) ? "" : given(female),
                "",
                female,
                person.born(),
                person.home(),
                last4());
    }

    private static boolean sameInitial(String first, Person person) {
        return first.charAt(0) == person.first().charAt(0);
    }

    /** Another person who happens to have the name. */
    Person namesakeOf(Person person) {
        Person other = stranger();
        return new Person(
                "",
                person.last(),
                person.first(),
                in(40) ? person.middle() : other.middle(),
                "",
                person.female(),
                other.born(),
                other.home(),
                other.last4());
    }

    Person.Home home() {
        return town.home();
    }

    String surname() {
        return names.surnames().next(random);
    }

    String given(boolean female) {
        return (female ? names.women() : names.men()).next(random);
    }

    String last4() {
        return String.valueOf(10_001 + random.nextInt(9_999)).substring(1);
    }

    private String nextId() {
        return "V" + (20_000_000 + ++count);
    }
}
