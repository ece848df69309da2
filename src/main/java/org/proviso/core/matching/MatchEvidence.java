package org.proviso.core.matching;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.proviso.core.matching.grades.DateGrade;
import org.proviso.core.matching.grades.GivenGrade;
import org.proviso.core.matching.grades.Grade;
import org.proviso.core.matching.grades.MiddleGrade;
import org.proviso.core.matching.grades.NumberGrade;
import org.proviso.core.matching.grades.SurnameGrade;
import org.proviso.core.matching.index.RollIndex;
import org.proviso.core.matching.index.RollWords;
import org.proviso.core.matching.spelling.PackedDate;

/**
 * What speaks for and against a pair, one sentence for each field that says something, with both papers' words where they
 * differ. Addresses and numbers are never among these words: a voter's may be protected.
 */
final class MatchEvidence {

    private final RollIndex index;
    private final EnvelopePerson claim;
    private final VoterComparison pair;
    private final List<String> sentences = new ArrayList<>();

    private MatchEvidence(RollIndex index, EnvelopePerson claim, VoterComparison pair) {
        this.index = index;
        this.claim = claim;
        this.pair = pair;
    }

    static List<String> of(RollIndex index, EnvelopePerson claim, VoterComparison pair) {
        MatchEvidence evidence = new MatchEvidence(index, claim, pair);
        evidence.addNumbers();
        evidence.addNames();
        evidence.add(pair.suffix());
        evidence.addAddress();
        return evidence.sentences;
    }

    private void addNumbers() {
        if (pair.date() == DateGrade.SAME && pair.last4() == NumberGrade.SAME) {
            sentences.add("Same date of birth and last 4 of SSN.");
        } else {
            boolean same = pair.date() == DateGrade.SAME;
            int onRoll = index.columns().birth(pair.voter());
            add(pair.date(), same ? "" : PackedDate.words(claim.birth()), PackedDate.words(onRoll));
            add(pair.birthPart());
            add(pair.last4());
        }
        add(pair.license());
    }

    private void addNames() {
        RollWords words = index.words();
        int voter = pair.voter();
        String surname = words.surnames().text(index.columns().surname(voter));
        String given = words.givens().text(index.columns().given(voter));
        String middle = words.middles().text(index.columns().middle(voter));
        if (pair.surname() == SurnameGrade.EXACT && pair.given() == GivenGrade.EXACT) {
            sentences.add("Same last name and first name.");
        } else {
            add(
                    pair.surname(),
                    pair.surname() == SurnameGrade.EXACT ? "" : claim.name().surname(),
                    surname);
            add(
                    pair.given(),
                    pair.given() == GivenGrade.EXACT ? "" : claim.name().given(),
                    given);
        }
        if (pair.surname() == SurnameGrade.EXACT) {
            sentences.add(rarity(words.surnames().count(index.columns().surname(voter))));
        }
        add(pair.middle(), pair.middle() == MiddleGrade.SAME ? "" : claim.name().middle(), middle);
    }

    /** How much the surname says: 1 in 41,000 voters share it. */
    private String rarity(int bearers) {
        if (bearers <= 1) {
            return "No other voter on the roll has this last name.";
        }
        long votersPerBearer = Math.round((double) index.voters() / bearers);
        return "1 in " + String.format(Locale.US, "%,d", twoFigures(votersPerBearer)) + " voters share this last name.";
    }

    private static long twoFigures(long number) {
        long unit = 1;
        while (number / unit >= 100) {
            unit *= 10;
        }
        return Math.round((double) number / unit) * unit;
    }

    private void addAddress() {
        if (pair.byFormerAddress()) {
            sentences.add("Former address on the envelope compared with the roll: "
                    + pair.address().words().toLowerCase(Locale.ROOT));
        } else {
            add(pair.address());
        }
    }

    private void add(Grade grade) {
        add(grade, "", "");
    }

    /** The sentence with what either paper has, where both have something. */
    private void add(Grade grade, String written, String onRoll) {
        String words = grade.words();
        if (words.isEmpty()) {
            return;
        }
        boolean shown = !written.isEmpty() && !onRoll.isEmpty();
        sentences.add(shown ? words.substring(0, words.length() - 1) + ": " + written + " / " + onRoll + "." : words);
    }
}
