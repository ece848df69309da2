package org.proviso.sample.county;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.proviso.core.StreetSegment;
import org.proviso.core.StreetSegment.Parity;

/**
 * The streets of the county. Each precinct part has some of its own; every two neighbors of one post town share two
 * more, one whose middle line is the border and one that runs from the first into the second.
 */
public final class Streets {

    private static final int OWN = 6;

    private final Dice dice;
    private final List<String> bare = WordList.words("street-names.txt");
    private final Set<String> taken = new HashSet<>();
    private final List<List<StreetSegment>> ofPart = new ArrayList<>();
    private final List<CountyPart> parts;

    Streets(List<CountyPart> parts, Dice dice) {
        this.parts = parts;
        this.dice = dice;
        parts.forEach(part -> ofPart.add(new ArrayList<>()));
        for (int i = 0; i < parts.size(); i++) {
            layOwn(i);
            if (i + 1 < parts.size()
                    && parts.get(i).zip().equals(parts.get(i + 1).zip())) {
                layBorder(i);
                layThrough(i);
            }
        }
    }

    private void layOwn(int part) {
        for (int n = 0; n < OWN; n++) {
            int low = firstNumber(part);
            add(part, low, low + reach(part), Parity.BOTH, name(part));
        }
    }

    private void layBorder(int part) {
        String street = name(part);
        int low = firstNumber(part);
        add(part, low, low + reach(part), Parity.ODD, street);
        add(part + 1, low, low + reach(part), Parity.EVEN, street);
    }

    private void layThrough(int part) {
        String street = name(part);
        int low = firstNumber(part);
        int middle = low + reach(part) + 1;
        add(part, low, middle - 1, Parity.BOTH, street);
        add(part + 1, middle, middle + reach(part), Parity.BOTH, street);
    }

    private int firstNumber(int part) {
        return parts.get(part).town() ? 100 * dice.between(1, 9) : 1000 * dice.between(1, 8);
    }

    private int reach(int part) {
        return parts.get(part).town() ? 199 : 899;
    }

    private void add(int at, int low, int high, Parity parity, String street) {
        CountyPart part = parts.get(at);
        ofPart.get(at)
                .add(new StreetSegment(
                        low, high, parity, street, part.city(), part.zip(), part.precinct(), part.split()));
    }

    private String name(int part) {
        CountyPart at = parts.get(part);
        for (int tries = 0; tries < 1000; tries++) {
            String kind = at.town()
                    ? dice.pick("St", "St", "St", "Ave", "Ave", "Ln", "Ct", "Dr", "Blvd", "Pl")
                    : dice.pick("Rd", "Rd", "Rd", "Hwy", "Trl", "Ln");
            String direction = at.town() && dice.chance(0.2) ? dice.pick("N ", "S ", "E ", "W ") : "";
            String street = direction + dice.pick(bare) + " " + kind;
            if (taken.add(street + "|" + at.city())) {
                return street;
            }
        }
        throw new IllegalStateException("street names have run out in " + at.city());
    }

    List<StreetSegment> of(CountyPart part) {
        return ofPart.get(parts.indexOf(part));
    }

    public List<StreetSegment> all() {
        return ofPart.stream().flatMap(List::stream).toList();
    }
}
