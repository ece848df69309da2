package org.proviso.sample.county;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** The place of one sample election: parts, streets, ballots, housing, and everyone on the roll. */
public final class County {

    public final ElectionPlan plan;
    public final List<CountyPart> parts;
    public final Streets streets;
    public final BallotStyles ballots;
    public final Housing housing;
    public final NameBook names = new NameBook();
    public final List<Resident> roll = new ArrayList<>();

    public County(ElectionPlan plan, Dice dice) {
        this.plan = plan;
        this.parts = CountyPart.all(plan.primary());
        this.streets = new Streets(parts, dice.apart("streets"));
        this.housing = new Housing(streets, dice.apart("housing"));
        this.ballots =
                new BallotStyles(parts.stream().map(CountyPart::area).distinct().toList(), plan.parties());
    }

    public String styleOf(CountyPart part, String party) {
        return ballots.style(part.area(), party);
    }

    /** Parts that satisfy the test, of the same voting location first if there are any. */
    public CountyPart partLike(CountyPart near, Predicate<CountyPart> test, Dice dice) {
        List<CountyPart> fitting = parts.stream().filter(test).toList();
        List<CountyPart> close = fitting.stream()
                .filter(part -> part.location().equals(near.location()))
                .toList();
        return dice.pick(close.isEmpty() ? fitting : close);
    }

    public boolean onRoll(String last, String first) {
        return roll.stream().anyMatch(person -> person.last.equals(last) && person.first.equals(first));
    }

    public Optional<Resident> namesake(Resident of) {
        return roll.stream()
                .filter(person -> person != of && person.last.equals(of.last) && person.first.equals(of.first))
                .findFirst();
    }

    public List<String> locations() {
        return parts.stream().map(CountyPart::location).distinct().toList();
    }
}
