package org.proviso.core.matching;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.proviso.core.matching.grades.GivenGrade;
import org.proviso.core.matching.grades.SurnameGrade;
import org.proviso.core.matching.index.GivenName;
import org.proviso.core.matching.index.NearNames;
import org.proviso.core.matching.index.RollColumns;
import org.proviso.core.matching.index.RollIndex;
import org.proviso.core.matching.index.RollWords;
import org.proviso.core.matching.index.WrittenName;
import org.proviso.core.matching.spelling.IntColumn;
import org.proviso.core.matching.spelling.NameFingerprint;
import org.proviso.core.matching.spelling.NameText;
import org.proviso.core.matching.spelling.ParsedName;

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
    private final NamePairs exchangedSurnames;
    private final NamePairs exchangedGivens;
    private final Map<String, GivenName> known = new HashMap<>();
    private int belowZero;
    private WrittenName surname = WrittenName.NOTHING;
    private GivenName surnameAsGiven = GivenName.NONE;
    private GivenName given = GivenName.NONE;
    private final List<GivenName> middles = new ArrayList<>();
    private final NearNames nearSurnames;
    private final IntColumn near = new IntColumn();
    private final IntColumn sounds = new IntColumn();
    private String nearOf = "";
    private final WrittenName.Codes otherSurnames = new WrittenName.Codes();
    private final WrittenName.Codes formerOnRoll = new WrittenName.Codes();
    private final WrittenName.Codes surnameAsMiddle = new WrittenName.Codes();
    private EnvelopePerson claim;
    private SurnameGrade surnameGrade = SurnameGrade.UNKNOWN;
    private GivenGrade givenGrade = GivenGrade.UNKNOWN;

    NameComparer(RollIndex index) {
        words = index.words();
        columns = index.columns();
        NamePairs.Compared surnames =
                (a, b, common) -> SurnameGrade.of(a, b, common).ordinal();
        NamePairs.Compared givens =
                (a, b, common) -> GivenGrade.of(a, b, common).ordinal();
        surnamePairs = new NamePairs(words.surnames(), index.voters(), surnames);
        givenPairs = new NamePairs(words.givens(), index.voters(), givens);
        // A name in the wrong field is not a common name there: two that differ by a letter say nothing.
        exchangedSurnames = new NamePairs(words.surnames(), Integer.MAX_VALUE, surnames);
        exchangedGivens = new NamePairs(words.givens(), Integer.MAX_VALUE, givens);
        nearSurnames = index.lists().nearSurnames();
        claim = EnvelopePerson.NOBODY;
    }

    /** Takes the envelope with whose names the next ones are compared. */
    void start(EnvelopePerson next) {
        claim = next;
        ParsedName name = next.name();
        if (!name.surname().equals(surname.text())) {
            surnameAsGiven = GivenName.of(words, name.surname(), --belowZero);
            surname = surnameAsGiven.asSurname();
        }
        given = known(name.given());
        middles.clear();
        for (String middle : NameText.words(name.middle())) {
            if (middle.length() > 1) {
                middles.add(known(middle));
            }
        }
        startFormer(next);
    }

    private GivenName known(String name) {
        GivenName found = known.get(name);
        if (found == null) {
            found = GivenName.of(words, name, --belowZero);
            known.put(name, found);
        }
        return found;
    }

    /** The surname's number among the roll's, below zero when the roll does not have it. */
    int surnameNumber() {
        return surname.own();
    }

    int givenNumber() {
        return given.written().own();
    }

    /** Names of two letters are too short to be told from initials. */
    private void startFormer(EnvelopePerson next) {
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

    /**
     * The sounds of the roll's surnames one slip of the pen from the one written that sound otherwise. Two common names that
     * differ by a letter are two names.
     */
    IntColumn soundsOfNear() {
        if (!surname.text().equals(nearOf)) {
            nearOf = surname.text();
            near.empty();
            sounds.empty();
            nearSurnames.find(nearOf, near);
            for (int i = 0; i < near.size(); i++) {
                int sound = words.surnames().sound(near.get(i));
                if (sound != NameFingerprint.sound(surname.look()) && !surnamePairs.bothCommon(surname, near.get(i))) {
                    sounds.add(sound);
                }
            }
        }
        return sounds;
    }

    /** Compares the surname of a voter; false when it is another in every way, exchanged names included. */
    boolean compareSurname(int voter) {
        surnameGrade = surname(voter);
        return surnameGrade != SurnameGrade.DIFFERENT
                || !NameFingerprint.isFar(
                        given.asSurname().look(), words.surnames().look(columns.surname(voter)));
    }

    /** Compares the rest of the same voter's name; the grades are asked for afterwards. */
    void compareGiven(int voter) {
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
        SurnameGrade plain =
                NameFingerprint.isFar(surname.look(), words.surnames().look(code))
                        ? SurnameGrade.DIFFERENT
                        : SURNAMES[surnamePairs.grade(surname, code)];
        return plain != SurnameGrade.EXACT && isFormer(voter) ? SurnameGrade.FORMER : plain;
    }

    /** A former name on either paper, or a maiden name kept as a middle name. */
    private boolean isFormer(int voter) {
        int former = columns.former(voter);
        return otherSurnames.has(columns.surname(voter))
                || (former > 0 && formerOnRoll.has(former))
                || surnameAsMiddle.has(columns.middle(voter));
    }

    private GivenGrade given(int voter) {
        int code = columns.given(voter);
        WrittenName written = given.written();
        if (code == 0 || written.is(0)) {
            return GivenGrade.UNKNOWN;
        }
        if (written.is(code)) {
            return GivenGrade.EXACT;
        }
        boolean far = isFar(given, code);
        GivenGrade plain = far ? GivenGrade.DIFFERENT : GIVENS[givenPairs.grade(written, code)];
        if (plain.compareTo(GivenGrade.SHORT) < 0) {
            return plain;
        }
        if (!far && isJoined(voter, code)) {
            return GivenGrade.EXACT;
        }
        return goesByMiddle(voter, code) ? GivenGrade.MIDDLE : plain;
    }

    /** An initial is compared as such; what a table of nicknames brings together is never far. */
    private boolean isFar(GivenName name, int code) {
        return NameFingerprint.isFar(name.written().look(), words.givens().look(code))
                && !name.written().isInitial()
                && !NameFingerprint.isInitial(words.givens().look(code))
                && !name.givens().has(code);
    }

    /** Mary Ann on one paper, Maryann on the other. */
    private boolean isJoined(int voter, int code) {
        String onRoll = words.givens().text(code);
        String written = given.written().text();
        return isJoined(written, claim.name().middle(), onRoll)
                || isJoined(onRoll, words.middles().text(columns.middle(voter)), written);
    }

    private static boolean isJoined(String given, String middle, String whole) {
        return !middle.isEmpty()
                && whole.length() > given.length()
                && whole.startsWith(given)
                && whole.equals(given + NameText.words(middle).get(0));
    }

    private boolean goesByMiddle(int voter, int code) {
        int middle = columns.middle(voter);
        if (middle > 0 && !given.written().isInitial() && given.middles().has(middle)) {
            return true;
        }
        for (GivenName other : middles) {
            if (other.givens().has(code)) {
                return true;
            }
        }
        return words.middles().isDouble(middle)
                && !given.written().isInitial()
                && NameText.words(words.middles().text(middle))
                        .contains(given.written().text());
    }

    private boolean isSwapped(int voter) {
        int surnameCode = columns.surname(voter);
        int givenCode = columns.given(voter);
        if (NameFingerprint.isFar(given.asSurname().look(), words.surnames().look(surnameCode))
                || isFar(surnameAsGiven, givenCode)) {
            return false;
        }
        if (exchangedSurnames.grade(given.asSurname(), surnameCode) > SurnameGrade.SOUNDS.ordinal()) {
            return false;
        }
        GivenGrade asGiven = GIVENS[exchangedGivens.grade(surnameAsGiven.written(), givenCode)];
        return asGiven.compareTo(GivenGrade.SOUNDS) <= 0 && asGiven != GivenGrade.INITIAL;
    }
}
