package org.proviso.core.matching.index;

import org.proviso.core.matching.spelling.IntColumn;
import org.proviso.core.matching.spelling.PackedDate;

/** The key fields of the roll's voters, one at a time: the same object is reused. */
public final class VoterKeys {

    private final RollColumns columns;
    private final RollWords words;
    private final KeyFields fields = new KeyFields();

    public VoterKeys(RollColumns columns, RollWords words) {
        this.columns = columns;
        this.words = words;
    }

    /** Adds the lists of a block on which the voter stands. */
    public void lists(int voter, BlockingKey block, ListNumbering slots, IntColumn sink) {
        int surname = columns.surname(voter);
        if (columns.former(voter) == 0 && !words.surnames().isDouble(surname)) {
            single(voter, words.surnames().sound(surname), block, slots, sink);
        } else {
            block.lists(of(voter, block), slots, sink);
        }
    }

    /** The same of {@link BlockingKey#lists} for a voter of one surname, without lists of fields: this runs for every voter and block. */
    private void single(int voter, int sound, BlockingKey block, ListNumbering slots, IntColumn sink) {
        int birth = columns.birth(voter);
        switch (block) {
            case SURNAME_SOUND_AND_DATE -> add(sound, birth, slots, sink);
            case DATE_AND_INITIAL -> add(birth, initial(voter), slots, sink);
            case SURNAME_SOUND_AND_MONTH -> dated(voter, sound, PackedDate.withoutDay(birth), slots, sink);
            case SURNAME_SOUND_AND_DAY -> dated(voter, sound, PackedDate.withoutMonth(birth), slots, sink);
            case SURNAME_SOUND_AND_BIRTHDAY -> dated(voter, sound, PackedDate.day(birth), slots, sink);
            case SURNAME_AND_HOUSE ->
                add(words.surnames().hash(columns.surname(voter)), columns.house(voter), slots, sink);
            case DATE_AND_LAST4 -> add(birth, columns.last4(voter), slots, sink);
            case LAST4_AND_SURNAME_SOUND -> add(sound, columns.last4(voter), slots, sink);
            case LAST4_AND_GIVEN_SOUND -> add(givenSound(voter), columns.last4(voter), slots, sink);
            case NAME_SOUNDS -> add(sound, givenSound(voter), slots, sink);
            case NAME_SOUNDS_OF_UNDATED -> {
                if (birth == PackedDate.UNKNOWN) {
                    add(sound, givenSound(voter), slots, sink);
                }
            }
            case LICENSE -> license(columns.license(voter), slots, sink);
            case HOUSE_AND_STREET -> address(voter, slots, sink);
        }
    }

    private static void add(int first, int second, ListNumbering slots, IntColumn sink) {
        if (first != 0 && second != 0) {
            sink.add(slots.of(first, second));
        }
    }

    private static void license(int number, ListNumbering slots, IntColumn sink) {
        if (number != 0) {
            sink.add(slots.of(ListNumbering.mix(number, 0)));
        }
    }

    private void address(int voter, ListNumbering slots, IntColumn sink) {
        int house = columns.house(voter);
        int street = words.streets().hash(columns.street(voter));
        if (house != 0 && street != 0) {
            sink.add(slots.of(ListNumbering.mix(house, street)));
        }
    }

    private void dated(int voter, int sound, int part, ListNumbering slots, IntColumn sink) {
        int initial = initial(voter);
        if (part != 0 && initial != 0) {
            add(sound, ListNumbering.mix(part, initial), slots, sink);
        }
    }

    private int initial(int voter) {
        return words.givens().initial(columns.given(voter));
    }

    private int givenSound(int voter) {
        return words.givens().sound(columns.given(voter));
    }

    /** Only what the block reads is filled. */
    KeyFields of(int voter, BlockingKey block) {
        fields.clear();
        surname(columns.surname(voter));
        surname(columns.former(voter));
        given(voter);
        fields.date = columns.birth(voter);
        fields.undated = fields.date == PackedDate.UNKNOWN;
        fields.addDate(fields.date);
        fields.houses.add(columns.house(voter));
        fields.last4 = columns.last4(voter);
        fields.license = columns.license(voter);
        if (block == BlockingKey.HOUSE_AND_STREET) {
            fields.addAddress(columns.house(voter), words.streets().hash(columns.street(voter)));
        }
        return fields;
    }

    private void surname(int code) {
        TextDictionary surnames = words.surnames();
        if (surnames.isDouble(code)) {
            fields.addSurname(surnames.text(code), surnames.sound(code));
        } else {
            fields.surnames.add(surnames.hash(code));
            fields.surnameSounds.add(surnames.sound(code));
        }
    }

    private void given(int voter) {
        int code = columns.given(voter);
        fields.addGiven(words.givens().text(code), words.givens().sound(code));
    }
}
