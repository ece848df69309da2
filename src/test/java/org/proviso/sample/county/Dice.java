package org.proviso.sample.county;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** All chance of the generator: the same seed and subject throw the same numbers on every machine. */
public final class Dice {

    private final long seed;
    private final Random random;

    public Dice(long seed) {
        this.seed = seed;
        this.random = new Random(seed);
    }

    /** Dice of their own for a subject, so that a change in one part of the sample leaves the others alone. */
    public Dice apart(String subject) {
        long mixed = (seed + 0x9E3779B97F4A7C15L) * 0xBF58476D1CE4E5B9L ^ subject.hashCode() * 0x94D049BB133111EBL;
        return new Dice(mixed ^ (mixed >>> 31));
    }

    public int below(int bound) {
        return random.nextInt(bound);
    }

    /** A whole number from low to high, both included. */
    public int between(int low, int high) {
        return low + random.nextInt(high - low + 1);
    }

    public double fraction() {
        return random.nextDouble();
    }

    /** A number about zero, mostly within one: the sum of three even draws. */
    public double wobble() {
        return (fraction() + fraction() + fraction() - 1.5) / 1.5;
    }

    public boolean chance(double probability) {
        return random.nextDouble() < probability;
    }

    public long any() {
        return random.nextLong();
    }

    public <T> T pick(List<T> from) {
        return from.get(below(from.size()));
    }

    public String pick(String... from) {
        return from[below(from.length)];
    }

    public LocalDate day(LocalDate first, LocalDate last) {
        int days = (int) (last.toEpochDay() - first.toEpochDay());
        return first.plusDays(days <= 0 ? 0 : below(days + 1));
    }

    public String digits(int count) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < count; i++) {
            text.append((char) ('0' + below(10)));
        }
        return text.toString();
    }

    public <T> List<T> shuffled(List<T> from) {
        List<T> mixed = new ArrayList<>(from);
        for (int i = mixed.size() - 1; i > 0; i--) {
            T held = mixed.get(i);
            int other = below(i + 1);
            mixed.set(i, mixed.get(other));
            mixed.set(other, held);
        }
        return mixed;
    }
}
