package org.proviso.core.matching.index;

/** The distinct words of a roll: surnames (former ones too), given names, middle names, streets and doors. */
public record RollWords(
        Dictionary surnames, Dictionary givens, Dictionary middles, Dictionary streets, Dictionary doors) {

    RollWords() {
        this(new Dictionary(), new Dictionary(), new Dictionary(), new Dictionary(), new Dictionary());
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
