package org.proviso.core.matching;

import org.proviso.core.matching.KeyFields.IntBag;

/**
 * A pair of fields (or a pair and an initial) that bring an envelope and its voter together. Each slip of the pen, missing box or change of name
 * leaves at least one of these pairs whole.
 */
enum Block {
    /** Whatever the given name has become. */
    SURNAME_SOUND_AND_DATE {
        @Override
        void keys(KeyFields of, IntColumn sink) {
            pairs(of.surnameSounds, of.dates, sink);
        }
    },
    /** Whatever the surname has become. */
    DATE_AND_INITIAL {
        @Override
        void keys(KeyFields of, IntColumn sink) {
            pairs(of.dates, of.initials, sink);
        }
    },
    /** A slip in the day. */
    SURNAME_SOUND_AND_MONTH {
        @Override
        void keys(KeyFields of, IntColumn sink) {
            named(of, PackedDate.withoutDay(of.date), sink);
        }
    },
    /** A slip in the month. */
    SURNAME_SOUND_AND_DAY {
        @Override
        void keys(KeyFields of, IntColumn sink) {
            named(of, PackedDate.withoutMonth(of.date), sink);
        }
    },
    /** A slip in the year. */
    SURNAME_SOUND_AND_BIRTHDAY {
        @Override
        void keys(KeyFields of, IntColumn sink) {
            named(of, PackedDate.day(of.date), sink);
        }
    },
    SURNAME_AND_HOUSE {
        @Override
        void keys(KeyFields of, IntColumn sink) {
            pairs(of.surnames, of.houses, sink);
        }
    },
    DATE_AND_LAST4 {
        @Override
        void keys(KeyFields of, IntColumn sink) {
            if (of.last4 > 0) {
                each(of.dates, of.last4, sink);
            }
        }
    },
    LAST4_AND_SURNAME_SOUND {
        @Override
        void keys(KeyFields of, IntColumn sink) {
            if (of.last4 > 0) {
                each(of.surnameSounds, of.last4, sink);
            }
        }
    },
    LAST4_AND_GIVEN_SOUND {
        @Override
        void keys(KeyFields of, IntColumn sink) {
            if (of.last4 > 0) {
                each(of.givenSounds, of.last4, sink);
            }
        }
    },
    LICENSE {
        @Override
        void keys(KeyFields of, IntColumn sink) {
            if (of.license != 0) {
                sink.add(mix(of.license, 0));
            }
        }
    },
    NAME_SOUNDS {
        @Override
        void keys(KeyFields of, IntColumn sink) {
            pairs(of.surnameSounds, of.givenSounds, sink);
        }

        /** With a date on the envelope a common name alone says too little: its bearers are found by the date. */
        @Override
        int longest(KeyFields of) {
            return of.dates.size() == 0 ? LONGEST_LIST : LONGEST_LIST_OF_DATED;
        }
    },
    /** Voters of whom the roll has no date. */
    NAME_SOUNDS_OF_UNDATED {
        @Override
        void keys(KeyFields of, IntColumn sink) {
            if (of.undated) {
                pairs(of.surnameSounds, of.givenSounds, sink);
            }
        }
    },
    HOUSE_AND_STREET {
        @Override
        void keys(KeyFields of, IntColumn sink) {
            for (int i = 0; i < of.addresses.size(); i++) {
                sink.add(of.addresses.get(i));
            }
        }
    };

    /** Longer lists tell nothing: a person in one is found through a rarer pair. */
    private static final int LONGEST_LIST = 4_000;

    /** Against another birth date only a rare name counts, and then with a middle name. */
    private static final int LONGEST_LIST_OF_DATED = 20;

    /** Adds the number of each pair the person has; equal pairs give equal numbers. */
    abstract void keys(KeyFields of, IntColumn sink);

    /** When the block's voters are looked at. */
    Stage stage() {
        return switch (this) {
            case SURNAME_SOUND_AND_MONTH, SURNAME_SOUND_AND_DAY, SURNAME_SOUND_AND_BIRTHDAY -> Stage.OTHER_DATE;
            case NAME_SOUNDS -> Stage.NAME_ONLY;
            case NAME_SOUNDS_OF_UNDATED -> Stage.UNDATED;
            default -> Stage.NEAR;
        };
    }

    /** The longest list that is worth a look for an envelope. */
    int longest(KeyFields of) {
        return LONGEST_LIST;
    }

    /** The surname's sound and the given name's initial with a part of the date, 0 where there is none. */
    private static void named(KeyFields of, int part, IntColumn sink) {
        if (part == 0) {
            return;
        }
        for (int i = 0; i < of.initials.size(); i++) {
            each(of.surnameSounds, mix(part, of.initials.get(i)), sink);
        }
    }

    private static void pairs(IntBag a, IntBag b, IntColumn sink) {
        for (int i = 0; i < b.size(); i++) {
            each(a, b.get(i), sink);
        }
    }

    private static void each(IntBag a, int b, IntColumn sink) {
        for (int i = 0; i < a.size(); i++) {
            sink.add(mix(a.get(i), b));
        }
    }

    /** Spreads two numbers over all bits of one (the finishing steps of a 64-bit hash; constants of SplitMix64). */
    static int mix(int a, int b) {
        long bits = (long) a << 32 ^ b & 0xffffffffL;
        bits = (bits ^ bits >>> 30) * 0xbf58476d1ce4e5b9L;
        bits = (bits ^ bits >>> 27) * 0x94d049bb133111ebL;
        return (int) (bits ^ bits >>> 31);
    }
}
