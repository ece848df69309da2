package org.proviso.sample.county;

import java.time.LocalDate;
import org.proviso.sample.county.Resident.Kin;

/** Settles the county: singles, couples, grown children, people who share a flat, and those easily mistaken. */
public final class Households {

    private static final int[] AGES = {18, 24, 30, 37, 45, 52, 60, 67, 75, 82, 90, 101};
    private static final int[] SHARE = {10, 10, 12, 12, 12, 12, 11, 9, 7, 4, 1};

    private final County county;
    private final Dice dice;

    public Households(County county, Dice dice) {
        this.county = county;
        this.dice = dice;
    }

    public void settle() {
        int special = county.plan.voters() / 400;
        for (int i = 0; i < special; i++) {
            twins();
            seniorAndJunior();
            parentAndChild();
        }
        while (county.roll.size() < county.plan.voters()) {
            household();
        }
    }

    private void household() {
        int room = county.plan.voters() - county.roll.size();
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
        Resident wife = stranger(home(), Math.max(21, age()));
        int age = Math.max(20, wife.ageOn(county.plan.date()) + dice.between(-4, 6));
        Resident husband = relative(wife, false, birth(Math.min(age, 99)));
        if (dice.chance(0.12)) {
            wife.last = county.names.surname(dice) + "-" + wife.last;
        } else if (dice.chance(0.15)) {
            wife.roll.set("former_name", county.names.surname(dice));
        }
        add(wife);
        add(husband);
        int childAge = wife.ageOn(county.plan.date()) - dice.between(20, 36);
        if (withChild && childAge >= 18) {
            add(relative(husband, dice.chance(0.5), birth(childAge)));
        }
    }

    private void twins() {
        Resident resident = stranger(home(), dice.between(18, 60));
        Resident other = relative(resident, resident.woman, resident.born);
        while (other.first.equals(resident.first)) {
            other.first = county.names.given(resident.woman, resident.born.getYear(), dice);
        }
        Resident.alike(resident, Kin.TWIN, other, Kin.TWIN);
        add(resident);
        add(other);
    }

    private void seniorAndJunior() {
        Resident senior = man(dice.between(50, 85));
        Resident junior = namesake(senior, dice.between(22, 30));
        senior.suffix = "Sr";
        junior.suffix = "Jr";
        Resident.alike(senior, Kin.JUNIOR, junior, Kin.SENIOR);
        add(senior);
        add(junior);
    }

    private void parentAndChild() {
        Resident parent = stranger(home(), dice.between(50, 80));
        Resident child = namesake(parent, dice.between(20, 28));
        Resident.alike(parent, Kin.CHILD, child, Kin.PARENT);
        add(parent);
        add(child);
    }

    private Resident man(int age) {
        Resident person = stranger(home(), age);
        while (person.woman) {
            person = stranger(person.home, age);
        }
        return person;
    }

    /** A child at the same address with the parent's name; the middle name is the parent's for juniors and seniors. */
    private Resident namesake(Resident parent, int yearsYounger) {
        LocalDate born = parent.born.plusYears(yearsYounger).plusDays(dice.between(-150, 150));
        Resident child = relative(parent, parent.woman, born);
        child.first = parent.first;
        child.middle = dice.chance(0.5) ? parent.middle : child.middle;
        return child;
    }

    /** Someone invented, not yet on the roll. */
    public Resident stranger(Dwelling home, int age) {
        boolean woman = dice.chance(0.515);
        LocalDate born = birth(age);
        Resident person = new Resident(
                county.names.surname(dice),
                county.names.given(woman, born.getYear(), dice),
                woman,
                born,
                home,
                dice.any());
        person.middle = middle(person);
        return person;
    }

    private Resident relative(Resident of, boolean woman, LocalDate born) {
        String first = county.names.given(woman, born.getYear(), dice);
        Resident person = new Resident(of.last, first, woman, born, of.home, dice.any());
        person.middle = middle(person);
        return person;
    }

    private String middle(Resident person) {
        String name = county.names.given(person.woman, person.born.getYear() - 20, dice);
        double kind = dice.fraction();
        return kind < 0.2 ? "" : kind < 0.5 ? name.substring(0, 1) : name;
    }

    public Dwelling home() {
        CountyPart part = dice.pick(county.parts);
        return county.housing.in(part.town() || dice.chance(0.6) ? part : dice.pick(county.parts));
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
        return county.plan.date().minusYears(age).minusDays(dice.between(0, 364));
    }

    private void add(Resident person) {
        county.roll.add(person);
    }
}
