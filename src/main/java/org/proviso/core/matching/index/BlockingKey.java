package org.proviso.core.matching.index;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import org.proviso.core.matching.index.KeyFields.IntBag;
import org.proviso.core.matching.spelling.IntColumn;
import org.proviso.core.matching.spelling.PackedDate;

/**
 * A pair of fields (or a pair and an initial) that bring an envelope and its voter together. Each slip of the pen, missing box or change of name
 * leaves at least one of these pairs whole.
 */
public enum BlockingKey {
    /** Whatever the given name has become. */
    SURNAME_SOUND_AND_DATE {
        @Override
        public void lists(KeyFields of, ListNumbering slots, IntColumn sink) {
            pairs(of.surnameSounds, of.dates, slots, sink);
        }
    },
    /** Whatever the surname has become; with day and month exchanged too, last four or home must do. */
    DATE_AND_INITIAL {
        @Override
        public void lists(KeyFields of, ListNumbering slots, IntColumn sink) {
            for (int i = 0; of.date != PackedDate.UNKNOWN && i < of.initials.size(); i++) {
                sink.add(slots.of(of.date, of.initials.get(i)));
            }
        }
    },
    /** An error in the day. */
    SURNAME_SOUND_AND_MONTH {
        @Override
        public void lists(KeyFields of, ListNumbering slots, IntColumn sink) {
            named(of, PackedDate.withoutDay(of.date), slots, sink);
        }
    },
    /** An error in the month. */
    SURNAME_SOUND_AND_DAY {
        @Override
        public void lists(KeyFields of, ListNumbering slots, IntColumn sink) {
            named(of, PackedDate.withoutMonth(of.date), slots, sink);
        }
    },
    /** An error in the year. */
    SURNAME_SOUND_AND_BIRTHDAY {
        @Override
        public void lists(KeyFields of, ListNumbering slots, IntColumn sink) {
            named(of, PackedDate.day(of.date), slots, sink);
        }
    },
    SURNAME_AND_HOUSE {
        @Override
        public void lists(KeyFields of, ListNumbering slots, IntColumn sink) {
            pairs(of.surnames, of.houses, slots, sink);
        }
    },
    DATE_AND_LAST4 {
        @Override
        public void lists(KeyFields of, ListNumbering slots, IntColumn sink) {
            if (of.last4 > 0) {
                each(of.dates, of.last4, slots, sink);
            }
        }
    },
    LAST4_AND_SURNAME_SOUND {
        @Override
        public void lists(KeyFields of, ListNumbering slots, IntColumn sink) {
            if (of.last4 > 0) {
                each(of.surnameSounds, of.last4, slots, sink);
            }
        }
    },
    LAST4_AND_GIVEN_SOUND {
        @Override
        public void lists(KeyFields of, ListNumbering slots, IntColumn sink) {
            if (of.last4 > 0) {
                each(of.givenSounds, of.last4, slots, sink);
            }
        }
    },
    LICENSE {
        @Override
        public void lists(KeyFields of, ListNumbering slots, IntColumn sink) {
            if (of.license != 0) {
                sink.add(slots.of(ListNumbering.mix(of.license, 0)));
            }
        }
    },
    NAME_SOUNDS {
        @Override
        public void lists(KeyFields of, ListNumbering slots, IntColumn sink) {
            pairs(of.surnameSounds, of.givenSounds, slots, sink);
        }

        /** With a date on the envelope a common name alone says too little: its bearers are found by the date. */
        @Override
        public int longest(KeyFields of) {
            return of.dates.size() == 0 ? LONGEST_LIST : LONGEST_LIST_OF_DATED;
        }
    },
    /** Voters of whom the roll has no date. */
    NAME_SOUNDS_OF_UNDATED {
        @Override
        public void lists(KeyFields of, ListNumbering slots, IntColumn sink) {
            if (of.undated) {
                pairs(of.surnameSounds, of.givenSounds, slots, sink);
            }
        }
    },
    HOUSE_AND_STREET {
        @Override
        public void lists(KeyFields of, ListNumbering slots, IntColumn sink) {
            for (int i = 0; i < of.addresses.size(); i++) {
                sink.add(slots.of(of.addresses.get(i)));
            }
        }
    };

    /** Longer lists tell nothing: a person in one is found through a rarer pair. */
    private static final int LONGEST_LIST = 4_000;

    /** Against another birth date only a rare name counts, and then with a middle name. */
    private static final int LONGEST_LIST_OF_DATED = 20;

    private static final Map<SearchStage, BlockingKey[]> BY_STAGE = byStage();

    /** The blocks of a stage. */
    public static BlockingKey[] of(SearchStage stage) {
        return Objects.requireNonNull(BY_STAGE.get(stage), "every stage has its blocks");
    }

    private static Map<SearchStage, BlockingKey[]> byStage() {
        Map<SearchStage, BlockingKey[]> blocks = new EnumMap<>(SearchStage.class);
        for (SearchStage stage : SearchStage.values()) {
            blocks.put(
                    stage,
                    Arrays.stream(values())
                            .filter(block ->
                                    stage == SearchStage.RESPELLED ? block.isRespelled() : block.stage() == stage)
                            .toArray(BlockingKey[]::new));
        }
        return blocks;
    }

    /** Adds the list of each pair the person has. */
    public abstract void lists(KeyFields of, ListNumbering slots, IntColumn sink);

    /** Whether each pair begins with the surname's sound. */
    boolean isBySound() {
        return switch (this) {
            case SURNAME_SOUND_AND_DATE,
                    SURNAME_SOUND_AND_MONTH,
                    SURNAME_SOUND_AND_DAY,
                    SURNAME_SOUND_AND_BIRTHDAY,
                    LAST4_AND_SURNAME_SOUND,
                    NAME_SOUNDS,
                    NAME_SOUNDS_OF_UNDATED -> true;
            default -> false;
        };
    }

    /** Whether it is worth a look under other spellings of the surname: at home, or undated, it is found without. */
    private boolean isRespelled() {
        return isBySound() && this != NAME_SOUNDS_OF_UNDATED;
    }

    /** When the block's voters are looked at. */
    SearchStage stage() {
        return switch (this) {
            case DATE_AND_INITIAL, SURNAME_AND_HOUSE, LAST4_AND_GIVEN_SOUND -> SearchStage.NEAR;
            case SURNAME_SOUND_AND_MONTH, SURNAME_SOUND_AND_DAY, SURNAME_SOUND_AND_BIRTHDAY -> SearchStage.OTHER_DATE;
            case NAME_SOUNDS -> SearchStage.NAME_ONLY;
            case NAME_SOUNDS_OF_UNDATED -> SearchStage.UNDATED;
            default -> SearchStage.SAME;
        };
    }

    /** The longest list that is worth a look for an envelope. */
    public int longest(KeyFields of) {
        return LONGEST_LIST;
    }

    /** The surname's sound and the given name's initial with a part of the date, 0 where there is none. */
    private static void named(KeyFields of, int part, ListNumbering slots, IntColumn sink) {
        if (part == 0) {
            return;
        }
        for (int i = 0; i < of.initials.size(); i++) {
            each(of.surnameSounds, ListNumbering.mix(part, of.initials.get(i)), slots, sink);
        }
    }

    private static void pairs(IntBag a, IntBag b, ListNumbering slots, IntColumn sink) {
        for (int i = 0; i < b.size(); i++) {
            each(a, b.get(i), slots, sink);
        }
    }

    private static void each(IntBag a, int b, ListNumbering slots, IntColumn sink) {
        for (int i = 0; i < a.size(); i++) {
            sink.add(slots.of(a.get(i), b));
        }
    }
}
