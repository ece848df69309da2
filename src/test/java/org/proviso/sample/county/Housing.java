package org.proviso.sample.county;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.proviso.core.StreetSegment;

/** Gives out houses and apartments, each once. */
public final class Housing {

    private static final int APARTMENTS = 12;

    private final Streets streets;
    private final Dice dice;
    private final Set<String> taken = new HashSet<>();

    Housing(Streets streets, Dice dice) {
        this.streets = streets;
        this.dice = dice;
    }

    /** An empty house or apartment of that part. */
    public Dwelling in(CountyPart part) {
        List<StreetSegment> segments = streets.of(part);
        while (true) {
            StreetSegment segment = dice.pick(segments);
            boolean apartment = part.town() && dice.chance(0.15);
            int number = apartment ? segment.low() + dice.below(4) : dice.between(segment.low() + 4, segment.high());
            String unit = apartment ? "Apt " + dice.between(1, APARTMENTS) : "";
            if (segment.parity().holds(number) && taken.add(number + unit + segment.street() + segment.city())) {
                return new Dwelling(number, unit, segment, part);
            }
        }
    }
}
