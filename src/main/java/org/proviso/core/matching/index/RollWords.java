package org.proviso.core.matching.index;

/** The distinct words of a roll: surnames (former ones too), given names, middle names, streets and doors. */
public record RollWords(
        TextDictionary surnames,
        TextDictionary givens,
        TextDictionary middles,
        TextDictionary streets,
        TextDictionary doors) {

    RollWords() {
        this(
                new TextDictionary(),
                new TextDictionary(),
                new TextDictionary(),
                new TextDictionary(),
                new TextDictionary());
    }

    /** Takes the counts of others away, whose words are all among these. */
    void less(RollWords others) {
        surnames.less(others.surnames);
        givens.less(others.givens);
    }

    void freeze() {
        surnames.freeze();
        givens.freeze();
        middles.freeze();
        streets.freeze();
    }
}
