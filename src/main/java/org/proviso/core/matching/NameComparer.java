package org.proviso.core.matching;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Compares an envelope's names with the roll's, the quick looks first: of a hundred voters looked at, all but one or two
 * are told apart by their letters alone. For one thread.
 */
final class NameComparer {

    private static final SurnameGrade[] SURNAMES = SurnameGrade.values();
    private static final GivenGrade[] GIVENS = GivenGrade.values();

    private final RollWords words;
    private final RollColumns columns;
    private final NamePairs surnamePairs;
    private final NamePairs givenPairs;
    private final Written surname;
    private final Written given;
    private final Written givenAsSurname;
    private final Written surnameAsGiven;
    private final Map<String, Forms> known = new HashMap<>();
    private Forms forms = Forms.NONE;
    private final List<Forms> middleForms = new ArrayList<>();
    private final Written.Codes otherSurnames = new Written.Codes();
    private final Written.Codes formerOnRoll = new Written.Codes();
    private final Written.Codes surnameAsMiddle = new Written.Codes();
    private Claim claim;
    private SurnameGrade surnameGrade = SurnameGrade.UNKNOWN;
    private GivenGrade givenGrade = GivenGrade.UNKNOWN;

    NameComparer(RollIndex index) {
        words = index.words();
        columns = index.columns();
        surnamePairs = new NamePairs(
                words.surnames(),
                index.voters(),
                (a, b, common) -> SurnameGrade.of(a, b, common).ordinal());
        givenPairs = new NamePairs(
                words.givens(),
                index.voters(),
                (a, b, common) -> GivenGrade.of(a, b, common).ordinal());
        surname = new Written(words.surnames());
        given = new Written(words.givens());
        givenAsSurname = new Written(words.surnames());
        surnameAsGiven = new Written(words.givens());
        claim = Claim.NOBODY;
    }

    /** Takes the envelope with whose names the next ones are compared. */
    void start(Claim next) {
        claim = next;
        ParsedName name = next.name();
        surname.set(name.surname());
        given.set(name.given());
        givenAsSurname.set(name.given());
        surnameAsGiven.set(name.surname());
        forms = forms(name.given());
        middleForms.clear();
        for (String middle : NameText.words(name.middle())) {
            if (middle.length() > 1) {
                middleForms.add(forms(middle));
            }
        }
        startFormer(next);
    }

    /** The numbers of what a bearer of the name may go by, among the roll's given and middle names. */
    private record Forms(Written.Codes givens, Written.Codes middles) {

        static final Forms NONE = new Forms(new Written.Codes(), new Written.Codes());
    }

    /** The forms of one name, found once: the same few hundred names come again and again. */
    private Forms forms(String name) {
        Forms found = known.get(name);
        if (found == null) {
            found = new Forms(new Written.Codes(), new Written.Codes());
            for (String form : Nicknames.of(name)) {
                found.givens().add(words.givens(), form);
                if (form.length() > 1) {
                    found.middles().add(words.middles(), form);
                }
            }
            known.put(name, found);
        }
        return found;
    }

    /** Names of two letters are too short to be told from initials. */
    private void startFormer(Claim next) {
        otherSurnames.clear();
        formerOnRoll.clear();
        surnameAsMiddle.clear();
        String now = NameText.joined(next.name().surname());
        if (now.length() > 2) {
            formerOnRoll.add(words.surnames(), next.name().surname());
            surnameAsMiddle.add(words.middles(), now);
        }
        for (String other : new String[] {next.formerSurname(), next.name().middle()}) {
            if (other.length() > 2) {
                otherSurnames.add(words.surnames(), other);
                otherSurnames.add(words.surnames(), NameText.joined(other));
            }
        }
        if (next.formerSurname().length() > 2) {
            formerOnRoll.add(words.surnames(), next.formerSurname());
        }
    }

    /** Compares the names of a voter; the grades are asked for afterwards. */
    void compare(int voter) {
        surnameGrade = surname(voter);
        givenGrade = given(voter);
        if (givenGrade.compareTo(GivenGrade.SWAPPED) > 0
                && surnameGrade.compareTo(SurnameGrade.SWAPPED) > 0
                && isSwapped(voter)) {
            surnameGrade = SurnameGrade.SWAPPED;
            givenGrade = GivenGrade.SWAPPED;
        }
    }

    SurnameGrade surname() {
        return surnameGrade;
    }

    GivenGrade given() {
        return givenGrade;
    }

    private SurnameGrade surname(int voter) {
        int code = columns.surname(voter);
        if (code == 0 || surname.is(0)) {
            return isFormer(voter) ? SurnameGrade.FORMER : SurnameGrade.UNKNOWN;
        }
        if (surname.is(code)) {
            return SurnameGrade.EXACT;
        }
        SurnameGrade plain = surname.isFar(code) ? SurnameGrade.DIFFERENT : SURNAMES[surnamePairs.grade(surname, code)];
        return plain != SurnameGrade.EXACT && isFormer(voter) ? SurnameGrade.FORMER : plain;
    }

    /** A former name on either paper, or a maiden name kept as a middle name. */
    private boolean isFormer(int voter) {
        int former = columns.former(voter);
        return otherSurnames.has(columns.surname(voter))
                || former > 0 && formerOnRoll.has(former)
                || surnameAsMiddle.has(columns.middle(voter));
    }

    private GivenGrade given(int voter) {
        int code = columns.given(voter);
        if (code == 0 || given.is(0)) {
            return GivenGrade.UNKNOWN;
        }
        if (given.is(code)) {
            return GivenGrade.EXACT;
        }
        boolean far = isFar(code);
        GivenGrade plain = far ? GivenGrade.DIFFERENT : GIVENS[givenPairs.grade(given, code)];
        if (plain.compareTo(GivenGrade.SHORT) < 0) {
            return plain;
        }
        if (!far && isJoined(voter, code)) {
            return GivenGrade.EXACT;
        }
        return goesByMiddle(voter, code) ? GivenGrade.MIDDLE : plain;
    }

    /** An initial is compared as such; what a table of nicknames brings together is never far. */
    private boolean isFar(int code) {
        boolean initial =
                given.text().length() == 1 || words.givens().text(code).length() == 1;
        return !initial && given.isFar(code) && !forms.givens().has(code);
    }

    /** Mary Ann on one paper, Maryann on the other. */
    private boolean isJoined(int voter, int code) {
        String onRoll = words.givens().text(code);
        return isJoined(given.text(), claim.name().middle(), onRoll)
                || isJoined(onRoll, words.middles().text(columns.middle(voter)), given.text());
    }

    private static boolean isJoined(String given, String middle, String whole) {
        return !middle.isEmpty()
                && whole.length() > given.length()
                && whole.startsWith(given)
                && whole.equals(given + NameText.words(middle).get(0));
    }

    private boolean goesByMiddle(int voter, int code) {
        int middle = columns.middle(voter);
        if (middle > 0 && given.text().length() > 1 && forms.middles().has(middle)) {
            return true;
        }
        for (Forms other : middleForms) {
            if (other.givens().has(code)) {
                return true;
            }
        }
        return words.middles().isDouble(middle)
                && given.text().length() > 1
                && NameText.words(words.middles().text(middle)).contains(given.text());
    }

    private boolean isSwapped(int voter) {
        int surnameCode = columns.surname(voter);
        int givenCode = columns.given(voter);
        if (givenAsSurname.isFar(surnameCode) || surnameAsGiven.isFar(givenCode)) {
            return false;
        }
        String onRoll = words.givens().text(givenCode);
        GivenGrade asGiven = GivenGrade.of(claim.name().surname(), onRoll, false);
        return SurnameGrade.of(claim.name().given(), words.surnames().text(surnameCode), false)
                                .compareTo(SurnameGrade.SOUNDS)
                        <= 0
                && asGiven.compareTo(GivenGrade.SOUNDS) <= 0
                && asGiven != GivenGrade.INITIAL;
    }
}
