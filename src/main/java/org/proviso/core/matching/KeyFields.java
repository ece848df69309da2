package org.proviso.core.matching;

import java.util.Arrays;

/**
 * What a person is looked up by, as numbers; 0 where nothing is known. A person has several surnames (halves, a former
 * one) and, on the envelope's side, several given names (nicknames), so these are short lists.
 */
final class KeyFields {

    final IntBag surnames = new IntBag();
    final IntBag surnameSounds = new IntBag();
    final IntBag givenSounds = new IntBag();
    final IntBag initials = new IntBag();
    final IntBag dates = new IntBag();
    int date;
    boolean undated;
    int last4;
    int license;
    final IntBag houses = new IntBag();
    final IntBag addresses = new IntBag();

    void clear() {
        surnames.clear();
        surnameSounds.clear();
        givenSounds.clear();
        initials.clear();
        dates.clear();
        houses.clear();
        addresses.clear();
        date = 0;
        undated = false;
        last4 = 0;
        license = 0;
    }

    /** A surname and, for a double one, its halves. */
    void addSurname(String surname, int sound) {
        surnames.add(NameText.joined(surname).hashCode());
        surnameSounds.add(sound);
        if (surname.indexOf(' ') >= 0) {
            for (String half : surname.split(" ", 0)) {
                surnames.add(half.hashCode());
                surnameSounds.add(Soundex.number(half));
            }
        }
    }

    void addGiven(String given, int sound) {
        if (!given.isEmpty()) {
            givenSounds.add(sound);
            initials.add(Look.initial(Look.of(given)));
        }
    }

    void addDate(int date) {
        if (date != PackedDate.UNKNOWN) {
            dates.add(date);
        }
    }

    /** A house number and the hash of a street's name without its spaces; 0 where there is none. */
    void addAddress(int house, int street) {
        if (house != 0 && street != 0) {
            houses.add(house);
            addresses.add(Slots.mix(house, street));
        }
    }

    /** A few numbers without repeats; 0 is not kept. */
    static final class IntBag {

        private int[] values = new int[8];
        private int size;

        void clear() {
            size = 0;
        }

        int size() {
            return size;
        }

        int get(int index) {
            return values[index];
        }

        void add(int value) {
            if (value == 0) {
                return;
            }
            for (int i = 0; i < size; i++) {
                if (values[i] == value) {
                    return;
                }
            }
            if (size == values.length) {
                values = Arrays.copyOf(values, size * 2);
            }
            values[size++] = value;
        }
    }
}
