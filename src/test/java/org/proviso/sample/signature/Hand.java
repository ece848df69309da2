package org.proviso.sample.signature;

import org.proviso.sample.county.Dice;

/**
 * A person's habits of writing: slant, size, loops and the rest, drawn once from the number that stands for the hand.
 * Lengths are in pixels or in heights of a small letter; slopes are ratios.
 */
record Hand(
        long seed,
        double height,
        double width,
        double slant,
        double slope,
        double ascender,
        double descender,
        double capital,
        double haste,
        double pen,
        double own,
        int form,
        boolean joined,
        int flourish) {

    static Hand of(long seed) {
        Dice dice = new Dice(seed);
        return new Hand(
                seed,
                14 + 9 * dice.fraction(),
                0.75 + 0.75 * dice.fraction(),
                -0.15 + 0.8 * dice.fraction(),
                -0.03 + 0.13 * dice.fraction(),
                0.75 + 0.5 * dice.fraction(),
                0.6 + 0.7 * dice.fraction(),
                0.95 + 0.5 * dice.fraction(),
                dice.chance(0.55) ? 0.75 * dice.fraction() : 0,
                0.8 + 0.7 * dice.fraction(),
                0.08 + 0.14 * dice.fraction(),
                dice.below(4),
                dice.chance(0.65),
                dice.below(6));
    }

    /** A hand that anyone would see is not this one: it leans otherwise and runs wider or narrower. */
    Hand another(Dice dice) {
        while (true) {
            Hand drawn = of(dice.any());
            if (Math.abs(drawn.slant - slant) > 0.2 && Math.abs(drawn.width - width) > 0.15) {
                return drawn;
            }
        }
    }

    /** What this hand writes of a name: in full, with an initial in front or in the middle. */
    String signs(String first, String middle, String last) {
        return switch (form) {
            case 0 -> first.charAt(0) + " " + last;
            case 1 -> middle.isEmpty() ? first + " " + last : first + " " + middle.charAt(0) + " " + last;
            default -> first + " " + last;
        };
    }

    /** The same hand on another day: a little larger or smaller, steeper or flatter. */
    Hand onAnotherDay(Dice dice) {
        return new Hand(
                seed,
                height * (1 + 0.12 * dice.wobble()),
                width * (1 + 0.12 * dice.wobble()),
                slant + 0.08 * dice.wobble(),
                slope + 0.045 * dice.wobble(),
                ascender * (1 + 0.1 * dice.wobble()),
                descender * (1 + 0.12 * dice.wobble()),
                capital * (1 + 0.08 * dice.wobble()),
                haste * (1 + 0.2 * dice.wobble()),
                pen * (1 + 0.12 * dice.wobble()),
                own,
                form,
                joined,
                flourish);
    }
}
