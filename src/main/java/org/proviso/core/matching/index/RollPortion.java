package org.proviso.core.matching.index;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.proviso.core.PersonName;
import org.proviso.core.matching.spelling.AddressNormalizer;
import org.proviso.core.matching.spelling.AddressNumber;
import org.proviso.core.matching.spelling.IdentifyingNumbers;
import org.proviso.core.matching.spelling.IntColumn;
import org.proviso.core.matching.spelling.NameSuffix;
import org.proviso.core.matching.spelling.NameText;
import org.proviso.core.matching.spelling.PackedDate;
import org.proviso.core.matching.spelling.ParsedName;
import org.proviso.core.matching.spelling.RollLine;
import org.proviso.core.matching.spelling.RollLine.Cell;
import org.proviso.core.matching.spelling.SpellingCache;
import org.proviso.core.matching.spelling.StreetAddress;
import org.proviso.core.matching.spelling.TextArena;

/**
 * What one thread has read of a roll: stretches of consecutive records, and the words in them by numbers of its own.
 * {@link RollIndex#of} joins the portions of all threads. For one thread; of use once.
 */
public final class RollPortion {

    private static final int SPECIAL = -1;

    private final RollWords words = new RollWords();
    private final List<Stretch> stretches = new ArrayList<>();
    private final Map<String, Integer> streets = new HashMap<>();
    private final Map<String, String> units = new HashMap<>();
    private final SpellingCache lastNames = new SpellingCache(this::plainSurname);
    private final SpellingCache firstNames = new SpellingCache(this::plainGiven);
    private final SpellingCache middleNames = new SpellingCache(text -> middle(NameText.fold(text)));
    private final SpellingCache suffixes =
            new SpellingCache(text -> NameSuffix.of(NameText.fold(text)).ordinal());
    private final SpellingCache streetNames =
            new SpellingCache(text -> words.streets().register(AddressNormalizer.street(text)));
    private final SpellingCache doors = new SpellingCache(text -> words.doors().register(AddressNumber.door(text)));
    private Stretch current = new Stretch(0);

    /** Records in the order of the roll; the places of the stretches bring them into order. */
    static final class Stretch {

        private final long place;
        private final TextArena ids = new TextArena();
        private final IntColumn cells = new IntColumn();
        private final IntColumn former = new IntColumn();
        private boolean anyFormer;

        Stretch(long place) {
            this.place = place;
        }

        long place() {
            return place;
        }

        TextArena ids() {
            return ids;
        }

        IntColumn cells() {
            return cells;
        }

        IntColumn former() {
            return former;
        }

        boolean anyFormer() {
            return anyFormer;
        }
    }

    /** Begins a stretch at a place of the roll. */
    public void begin(long place) {
        current = new Stretch(place);
        stretches.add(current);
    }

    /** How many records the stretch holds by now. */
    public int count() {
        return current.former.size();
    }

    List<Stretch> stretches() {
        return stretches;
    }

    RollWords words() {
        return words;
    }

    /** Takes a record, or refuses one whose birth date or last four are not written as they must be. */
    public boolean add(RollLine line) {
        int birth = PackedDate.of(line.bytes(), line.start(Cell.DATE_OF_BIRTH), line.end(Cell.DATE_OF_BIRTH));
        if (birth == PackedDate.NOT_A_DATE) {
            return false;
        }
        current.ids.add(line.bytes(), line.start(Cell.VOTER_ID), line.end(Cell.VOTER_ID));
        NameSuffix suffix = addName(line);
        current.cells.add(birth);
        addAddress(line);
        current.cells.add(
                line.isEmpty(Cell.DRIVERS_LICENSE) ? 0 : IdentifyingNumbers.license(line.text(Cell.DRIVERS_LICENSE)));
        current.cells.add(RollColumns.packed(
                IdentifyingNumbers.last4(line.bytes(), line.start(Cell.ID_LAST4), line.end(Cell.ID_LAST4)), suffix));
        return true;
    }

    /** A name in which each box holds what it should is read box by box; any other as a whole. */
    private NameSuffix addName(RollLine line) {
        int surname = lastNames.of(line, Cell.LAST_NAME);
        int given = firstNames.of(line, Cell.FIRST_NAME);
        if (surname == SPECIAL || given == SPECIAL || !line.isEmpty(Cell.FORMER_NAME)) {
            PersonName written = new PersonName(
                    line.text(Cell.LAST_NAME),
                    line.text(Cell.FIRST_NAME),
                    line.text(Cell.MIDDLE_NAME),
                    line.text(Cell.SUFFIX));
            return add(ParsedName.of(written), line.text(Cell.FORMER_NAME));
        }
        current.cells.add(words.surnames().again(surname));
        current.cells.add(words.givens().again(given));
        current.cells.add(words.middles().again(middleNames.of(line, Cell.MIDDLE_NAME)));
        current.former.add(0);
        return line.isEmpty(Cell.SUFFIX) ? NameSuffix.NONE : NameSuffix.at(suffixes.of(line, Cell.SUFFIX));
    }

    private int plainSurname(String text) {
        String folded = NameText.fold(text);
        return NameSuffix.atEnd(folded) == NameSuffix.NONE
                ? words.surnames().register(NameText.surname(folded))
                : SPECIAL;
    }

    private int plainGiven(String text) {
        String folded = NameText.fold(text);
        return folded.indexOf(' ') < 0 ? words.givens().register(folded) : SPECIAL;
    }

    private int middle(String folded) {
        return words.middles().register(folded);
    }

    private void addAddress(RollLine line) {
        int house = IdentifyingNumbers.house(line.bytes(), line.start(Cell.HOUSE_NUMBER), line.end(Cell.HOUSE_NUMBER));
        int door = line.isEmpty(Cell.UNIT) ? 0 : doors.of(line, Cell.UNIT);
        if (house < 0) {
            StreetAddress number = AddressNumber.of(line.text(Cell.HOUSE_NUMBER));
            house = number.houseNumber();
            door = door > 0 ? door : words.doors().register(number.door());
        }
        current.cells.add(house);
        current.cells.add(words.streets().again(streetNames.of(line, Cell.STREET)));
        current.cells.add(words.doors().again(door));
        current.cells.add(IdentifyingNumbers.zip(line.bytes(), line.start(Cell.ZIP), line.end(Cell.ZIP)));
    }

    /** Takes a record that is text already. */
    void add(RollEntry entry) {
        current.ids.add(entry.voterId());
        NameSuffix suffix = add(ParsedName.of(entry.name()), entry.formerName());
        current.cells.add(PackedDate.of(entry.birthDate()));
        addAddress(entry);
        current.cells.add(IdentifyingNumbers.license(entry.driversLicense()));
        current.cells.add(RollColumns.packed(IdentifyingNumbers.last4(entry.idLast4()), suffix));
    }

    private NameSuffix add(ParsedName name, String formerName) {
        String formerSurname = FormerName.surname(formerName, name);
        current.cells.add(words.surnames().add(name.surname()));
        current.cells.add(words.givens().add(name.given()));
        current.cells.add(words.middles().add(name.middle()));
        current.former.add(formerSurname.isEmpty() ? 0 : words.surnames().add(formerSurname));
        current.anyFormer |= !formerSurname.isEmpty();
        return name.suffix();
    }

    private void addAddress(RollEntry entry) {
        StreetAddress number = AddressNumber.of(entry.houseNumber());
        String unit = units.computeIfAbsent(entry.unit(), AddressNumber::door);
        current.cells.add(number.houseNumber());
        int street = streets.computeIfAbsent(
                entry.street(), written -> words.streets().register(AddressNormalizer.street(written)));
        current.cells.add(words.streets().again(street));
        current.cells.add(words.doors().add(unit.isEmpty() ? number.door() : unit));
        current.cells.add(IdentifyingNumbers.zip(entry.zip()));
    }
}
