package org.proviso.cli.sample;

import java.time.LocalDate;
import org.proviso.cli.sample.Person.Kin;

/** Settles the county: singles, couples, grown children, people who share a flat, and those easily mistaken. */
final class Families {

    private static final int[] AGES = {18, 24, 30, 37, 45, 52, 60, 67, 75, 82, 90, 101};
    private static final int[] SHARE = {10, 10, 12, 12, 12, 12, 11, 9, 7, 4, 1};

    private final Town town;
    private final Dice dice;

    Families(Town town, Dice dice) {
        this.town = town;
        this.dice = dice;
    }

    void settle() {
        int special = town.plan.voters() / 400;
        for (int i = 0; i < special; i++) {
            twins();
            seniorAndJunior();
            parentAndChild();
        }
        while (town.roll.size() < town.plan.voters()) {
            household();
        }
    }

    private void household() {
        int room = town.plan.voters() - town.roll.size();
        double kind = dice.fraction();
        if (kind < 0.35 || room < 4) {
            add(stranger(home(), age()));
        } else if (kind < 0.88) {
            couple(kind > 0.7);
        } else {
            Dwelling flat = home();
            add(stranger(flat, dice.between(18, 32)));
            add(stranger(flat, dice.between(18, 32)));
        }
    }

    private void couple(boolean withChild) {
        Person wife = stranger(home(), Math.max(21, age()));
        int age = Math.max(20, wife.ageOn(town.plan.date()) + dice.between(-4, 6));
        Person husband = relative(wife, false, birth(Math.min(age, 99)));
        if (dice.chance(0.12)) {
            wife.last = town.names.surname(dice) + "-" + wife.last;
        } else if (dice.chance(0.15)) {
            wife.roll.set("former_name", town.names.surname(dice));
        }
        add(wife);
        add(husband);
        int childAge = wife.ageOn(town.plan.date()) - dice.between(20, 36);
        if (withChild && childAge >= 18) {
            add(relative(husband, dice.chance(0.5), birth(childAge)));
        }
    }

    private void twins() {
        Person one = stranger(home(), dice.between(18, 60));
        Person other = relative(one, one.woman, one.born);
        while (other.first.equals(one.first)) {
            other.first = town.names.given(one.woman, one.born.getYear(), dice);
        }
        Person.alike(one, Kin.TWIN, other, Kin.TWIN);
        add(one);
        add(other);
    }

    private void seniorAndJunior() {
        Person senior = man(dice.between(50, 85));
        Person junior = namesake(senior, dice.between(22, 30));
        senior.suffix = "Sr";
        junior.suffix = "Jr";
        Person.alike(senior, Kin.JUNIOR, junior, Kin.SENIOR);
        add(senior);
        add(junior);
    }

    private void parentAndChild() {
        Person parent = stranger(home(), dice.between(50, 80));
        Person child = namesake(parent, dice.between(20, 28));
        Person.alike(parent, Kin.CHILD, child, Kin.PARENT);
        add(parent);
        add(child);
    }

    private Person man(int age) {
        Person person = stranger(home(), age);
        while (person.woman) {
            person = stranger(person.home, age);
        }
        return person;
    }

    /** A child at the same address with the parent's name; the middle name is the parent's for juniors and seniors. */
    private Person namesake(Person parent, int yearsYounger) {
        LocalDate born = parent.born.plusYears(yearsYounger).plusDays(dice.between(-150, 150));
        Person child = relative(parent, parent.woman, born);
        child.first = parent.first;
        child.middle = dice.chance(0.5) ? parent.middle : child.middle;
        return child;
    }

    /** Someone invented, not yet on the roll. */
    Person stranger(Dwelling home, int age) {
        boolean woman = dice.chance(0.515);
        LocalDate born = birth(age);
        Person person = new Person(
                town.names.surname(dice), town.names.given(woman, born.getYear(), dice), woman, born, home, dice.any());
        person.middle = middle(person);
        return person;
    }

    private Person relative(Person of, boolean woman, LocalDate born) {
        String first = town.names.given(woman, born.getYear(), dice);
        Person person = new Person(of.last, first, woman, born, of.home, dice.any());
        person.middle = middle(person);
        return person;
    }

    private String middle(Person person) {
        String name = town.names.given(person.woman, person.born.getYear() - 20, dice);
        double kind = dice.fraction();
        return kind < 0.2 ? "" : kind < 0.5 ? name.substring(0, 1) : name;
    }

    Dwelling home() {
        Part part = dice.pick(town.parts);
        return town.housing.in(part.town() || dice.chance(0.6) ? part : dice.pick(town.parts));
    }

    private int age() {
        int left = dice.below(100);
        int band = 0;
        while (left >= SHARE[band]) {
            left -= SHARE[band++];
        }
        return dice.between(AGES[band], AGES[band + 1] - 1);
    }

    private LocalDate birth(int age) {
        return town.plan.date().minusYears(age).minusDays(dice.between(0, 364));
    }

    private void add(Person person) {
        town.roll.add(person);
    }
}
