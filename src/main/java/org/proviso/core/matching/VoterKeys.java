package org.proviso.core.matching;

/** The key fields of the roll's voters, one at a time: the same object is filled anew. */
final class VoterKeys {

    private final RollColumns columns;
    private final RollWords words;
    private final KeyFields fields = new KeyFields();

    VoterKeys(RollColumns columns, RollWords words) {
        this.columns = columns;
        this.words = words;
    }

    /** Only what the block reads is filled: this runs twice for every voter and block. */
    KeyFields of(int voter, Block block) {
        fields.clear();
        switch (block) {
            case SURNAME_SOUND_AND_DATE, DATE_AND_INITIAL -> {
                surnames(voter, block != Block.DATE_AND_INITIAL);
                given(voter, block == Block.DATE_AND_INITIAL);
                fields.addDate(columns.birth(voter));
            }
            case SURNAME_SOUND_AND_MONTH, SURNAME_SOUND_AND_DAY, SURNAME_SOUND_AND_BIRTHDAY -> {
                surnames(voter, true);
                given(voter, true);
                fields.date = columns.birth(voter);
            }
            case SURNAME_AND_HOUSE -> {
                surnames(voter, true);
                fields.houses.add(columns.house(voter));
            }
            case DATE_AND_LAST4 -> {
                fields.addDate(columns.birth(voter));
                fields.last4 = columns.last4(voter);
            }
            case LAST4_AND_SURNAME_SOUND, LAST4_AND_GIVEN_SOUND -> {
                surnames(voter, block == Block.LAST4_AND_SURNAME_SOUND);
                given(voter, block == Block.LAST4_AND_GIVEN_SOUND);
                fields.last4 = columns.last4(voter);
            }
            case LICENSE -> fields.license = columns.license(voter);
            case NAME_SOUNDS -> {
                surnames(voter, true);
                given(voter, true);
            }
            case NAME_SOUNDS_OF_UNDATED -> undated(voter);
            case HOUSE_AND_STREET ->
                fields.addAddress(columns.house(voter), words.streets().hash(columns.street(voter)));
        }
        return fields;
    }

    private void undated(int voter) {
        fields.undated = columns.birth(voter) == PackedDate.UNKNOWN;
        surnames(voter, fields.undated);
        given(voter, fields.undated);
    }

    private void surnames(int voter, boolean wanted) {
        if (wanted) {
            surname(columns.surname(voter));
            surname(columns.former(voter));
        }
    }

    private void surname(int code) {
        Dictionary surnames = words.surnames();
        if (surnames.isDouble(code)) {
            fields.addSurname(surnames.text(code), surnames.sound(code));
        } else {
            fields.surnames.add(surnames.hash(code));
            fields.surnameSounds.add(surnames.sound(code));
        }
    }

    private void given(int voter, boolean wanted) {
        if (wanted) {
            int code = columns.given(voter);
            fields.addGiven(words.givens().text(code), words.givens().sound(code));
        }
    }
}
