package org.proviso.cli.sample;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** The place of one sample election: parts, streets, ballots, housing, and everyone on the roll. */
final class Town {

    final Plan plan;
    final List<Part> parts;
    final Streets streets;
    final Ballots ballots;
    final Housing housing;
    final NameBook names = new NameBook();
    final List<Person> roll = new ArrayList<>();

    Town(Plan plan, Dice dice) {
        this.plan = plan;
        this.parts = Part.all(plan.primary());
        this.streets = new Streets(parts, dice.apart("streets"));
        this.housing = new Housing(streets, dice.apart("housing"));
        this.ballots = new Ballots(parts.stream().map(Part::area).distinct().toList(), plan.parties());
    }

    String styleOf(Part part, String party) {
        return ballots.style(part.area(), party);
    }

    /** Parts that satisfy the test, of the same voting location first if there are any. */
    Part partLike(Part near, Predicate<Part> test, Dice dice) {
        List<Part> fitting = parts.stream().filter(test).toList();
        List<Part> close = fitting.stream()
                .filter(part -> part.location().equals(near.location()))
                .toList();
        return dice.pick(close.isEmpty() ? fitting : close);
    }

    boolean onRoll(String last, String first) {
        return roll.stream().anyMatch(person -> person.last.equals(last) && person.first.equals(first));
    }

    Optional<Person> namesake(Person of) {
        return roll.stream()
                .filter(person -> person != of && person.last.equals(of.last) && person.first.equals(of.first))
                .findFirst();
    }

    List<String> locations() {
        return parts.stream().map(Part::location).distinct().toList();
    }
}
