package org.proviso.core.matching.index;

import java.util.Arrays;
import org.proviso.core.matching.spelling.NameFingerprint;
import org.proviso.core.matching.spelling.NameText;
import org.proviso.core.matching.spelling.PackedDate;
import org.proviso.core.matching.spelling.Soundex;

/**
 * What a person is looked up by, as numbers; 0 where nothing is known. A person has several surnames (halves, a former
 * one) and, on the envelope's side, several given names (nicknames), so these are short lists.
 */
public final class KeyFields {

    final IntBag surnames = new IntBag();
    public final IntBag surnameSounds = new IntBag();
    final IntBag givenSounds = new IntBag();
    final IntBag initials = new IntBag();
    final IntBag dates = new IntBag();
    public int date;
    public boolean undated;
    public int last4;
    public int license;
    final IntBag houses = new IntBag();
    final IntBag addresses = new IntBag();

    public void clear() {
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
    public void addSurname(String surname, int sound) {
        surnames.add(NameText.joined(surname).hashCode());
        surnameSounds.add(sound);
        if (surname.indexOf(' ') >= 0) {
            for (String half : surname.split(" ", 0)) {
                surnames.add(half.hashCode());
                surnameSounds.add(Soundex.number(half));
            }
        }
    }

    public void addGiven(String given, int sound) {
        if (!given.isEmpty()) {
            givenSounds.add(sound);
            initials.add(NameFingerprint.initial(NameFingerprint.of(given)));
        }
    }

    public void addDate(int date) {
        if (date != PackedDate.UNKNOWN) {
            dates.add(date);
        }
    }

    /** A house number and the hash of a street's name without its spaces; 0 where there is none. */
    public void addAddress(int house, int street) {
        if (house != 0 && street != 0) {
            houses.add(house);
            addresses.add(ListNumbering.mix(house, street));
        }
    }

    /** A few numbers without repeats; 0 is not kept. */
    public static final class IntBag {

        private int[] values = new int[8];
        private int size;

        public void clear() {
            size = 0;
        }

        public int size() {
            return size;
        }

        int get(int index) {
            return values[index];
        }

        public void add(int value) {
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
