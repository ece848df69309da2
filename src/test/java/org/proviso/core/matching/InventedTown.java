package org.proviso.core.matching;

import java.io.IOException;
import java.time.LocalDate;
import java.util.Random;

/** Makes invented people of one county: strangers, twins, children with a parent's name, namesakes. Seeded. */
final class InventedTown {

    private static final String[] STREETS = {
        "Quarry", "Sorrel", "Tamarack", "Harrow", "Millbrook", "Alder", "Foster Hill", "Juniper", "Kestrel", "Larkspur",
        "Meadow", "Otter Creek", "Pinnacle", "Ridge", "Saint Brendan", "Thistle", "Upland", "Verbena", "Willow",
                "Yarrow"
    };
    private static final String[] KINDS = {"St", "Ave", "Ln", "Dr", "Ct", "Rd", "Blvd", "Way"};
    private static final String[] WAYS = {"", "", "", "N ", "S ", "E ", "W "};
    private static final String[] CITIES = {"Millbrook", "Harrow", "Foster Mills", "Tamarack Falls"};

    private final Random random;
    private final NamePool surnames;
    private final NamePool women;
    private final NamePool men;
    private int count;

    InventedTown(Random random) throws IOException {
        this.random = random;
        surnames = NamePool.surnames();
        women = NamePool.givens(true);
        men = NamePool.givens(false);
    }

    InventedPerson stranger() {
        boolean female = random.nextBoolean();
        int place = random.nextInt(40);
        String street = WAYS[random.nextInt(7)] + STREETS[random.nextInt(20)]
                + (random.nextInt(3) == 0 ? " " + STREETS[random.nextInt(20)] : "") + " " + KINDS[random.nextInt(8)];
        return new InventedPerson(
                nextId(),
                surname(),
                given(female),
                random.nextInt(4) == 0 ? "" : given(female),
                random.nextInt(60) == 0 ? "Jr" : "",
                female,
                LocalDate.of(1930, 1, 1).plusDays(random.nextInt(28_500)),
                1 + random.nextInt(4_000),
                street,
                random.nextInt(5) == 0 ? "Apt " + (1 + random.nextInt(40)) : "",
                CITIES[place / 10],
                String.valueOf(49_800 + place),
                last4());
    }

    String surname() {
        return surnames.draw(random);
    }

    String given(boolean female) {
        return (female ? women : men).draw(random);
    }

    String last4() {
        return String.format("%04d", 1 + random.nextInt(9_999));
    }

    /** Same surname, date and home; another given name and number. */
    InventedPerson twinOf(InventedPerson person) {
        String first = given(person.female());
        while (first.equals(person.first())) {
            first = given(person.female());
        }
        return person.named(nextId(), first, given(person.female()), "").born(person.born(), last4());
    }

    /** Same name and home, a generation apart; half of them never write the mark. */
    InventedPerson childOf(InventedPerson person) {
        LocalDate born = person.born().plusDays(7_300 + random.nextInt(5_000));
        return person.named(nextId(), person.first(), person.middle(), random.nextBoolean() ? "Jr" : "")
                .born(born, last4());
    }

    /** Same name by chance; another date and home. */
    InventedPerson namesakeOf(InventedPerson person) {
        InventedPerson other = stranger();
        return person.named(nextId(), person.first(), random.nextBoolean() ? person.middle() : other.middle(), "")
                .born(other.born(), last4())
                .at(other);
    }

    private String nextId() {
        return String.format("%08d", ++count);
    }
}
