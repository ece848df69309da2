package org.proviso.core.matching.index;

import java.time.LocalDate;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import java.util.function.Function;
import java.util.function.IntPredicate;
import org.proviso.core.VoterId;
import org.proviso.core.matching.spelling.AddressNormalizer;
import org.proviso.core.matching.spelling.NameText;
import org.proviso.core.matching.spelling.PackedDate;
import org.proviso.core.matching.spelling.StreetAddress;
import org.proviso.core.matching.spelling.StreetName;

/**
 * The staff's look-up: voters by the beginning of a name, by birth date, by address or by the beginning of a voter number.
 * It walks the whole roll once, which takes some hundredths of a second for a million voters, and looks at no string on
 * the way. Thread-safe.
 */
public final class VoterLookup {

    private static final int PRACTICE = 5;

    private final UpdatedRoll roll;

    public VoterLookup(UpdatedRoll roll) {
        this.roll = roll;
    }

    /** Runs one look-up in advance, so that the first real one does not wait for code that has never run. */
    public void practice() {
        for (int round = 0; round < PRACTICE; round++) {
            named("Sm", "J", 1);
            born(LocalDate.EPOCH, 1);
            at("1 Main", 1);
            numbered("V", 1);
        }
    }

    /**
     * The numbers of up to so many voters whose surname (or former surname) begins so, and the given name too where one is
     * given, in the order of their names.
     */
    public List<VoterId> named(String surname, String given, int most) {
        String last = NameText.joined(NameText.fold(surname));
        String first = NameText.joined(NameText.fold(given));
        return last.isEmpty() ? List.of() : first(most, part -> named(part, last, first));
    }

    private static IntPredicate named(RollIndex part, String last, String first) {
        RollColumns columns = part.columns();
        IntPredicate surnames = beginning(part, part.words().surnames(), last);
        IntPredicate givens = beginning(part, part.words().givens(), first);
        return voter -> (surnames.test(columns.surname(voter)) || surnames.test(columns.former(voter)))
                && givens.test(columns.given(voter));
    }

    /** Those born on that day, in the order of their names. */
    public List<VoterId> born(LocalDate on, int most) {
        int date = PackedDate.of(on);
        return date == PackedDate.UNKNOWN
                ? List.of()
                : first(most, part -> voter -> part.columns().birth(voter) == date);
    }

    /** Those at an address: {@code 1204 Quarry} finds 1204 N Quarry St. Without a house number, the whole street. */
    public List<VoterId> at(String line, int most) {
        StreetAddress address = AddressNormalizer.parse(line, "");
        StreetName street = StreetName.of(address.street());
        return street.body().isEmpty() ? List.of() : first(most, part -> at(part, address.houseNumber(), street));
    }

    private static IntPredicate at(RollIndex part, int house, StreetName street) {
        RollColumns columns = part.columns();
        TextDictionary names = part.words().streets();
        IntPredicate streets = known(
                part,
                names.size(),
                code -> StreetName.of(names.text(code)).body().startsWith(street.body()));
        return voter -> (house == 0 || columns.house(voter) == house) && streets.test(columns.street(voter));
    }

    /** Those whose voter number begins so. */
    public List<VoterId> numbered(String beginning, int most) {
        String wanted = beginning.strip();
        return wanted.isEmpty() ? List.of() : first(most, part -> part.idBegins(wanted));
    }

    private static IntPredicate beginning(RollIndex part, TextDictionary names, String beginning) {
        return beginning.isEmpty()
                ? code -> true
                : known(
                        part,
                        names.size(),
                        code -> NameText.joined(names.text(code)).startsWith(beginning));
    }

    /** Answers about words are found once where there are fewer words than voters. */
    private static IntPredicate known(RollIndex part, int words, IntPredicate wanted) {
        if (part.size() < words) {
            return wanted;
        }
        BitSet known = new BitSet(words);
        for (int code = 0; code < words; code++) {
            known.set(code, wanted.test(code));
        }
        return known::get;
    }

    /** The first by surname, given name and number: of many, only so many are kept on the way. */
    private List<VoterId> first(int most, Function<RollIndex, IntPredicate> wanted) {
        Comparator<Integer> order = Comparator.comparing((Integer voter) -> surname(voter))
                .thenComparing(this::given)
                .thenComparing(roll::voterId);
        PriorityQueue<Integer> kept = new PriorityQueue<>(order.reversed());
        IntPredicate inIndex = wanted.apply(roll.index());
        BitSet gone = roll.gone();
        RollColumns columns = roll.index().columns();
        int last = Integer.MAX_VALUE;
        for (int voter = 0; voter < roll.index().size(); voter++) {
            // Names have their numbers in their order: whose surname comes after the last kept needs no closer look.
            if (inIndex.test(voter) && columns.surname(voter) <= last && !gone.get(voter)) {
                keep(voter, most, kept, order);
                last = kept.size() < most ? last : columns.surname(kept.element());
            }
        }
        IntPredicate inUpdate = wanted.apply(roll.added());
        for (int voter = 0; voter < roll.added().size(); voter++) {
            if (inUpdate.test(voter)) {
                keep(voter + roll.index().size(), most, kept, order);
            }
        }
        return kept.stream().sorted(order).map(roll::voterId).toList();
    }

    private static void keep(Integer voter, int most, PriorityQueue<Integer> kept, Comparator<Integer> order) {
        if (kept.size() < most) {
            kept.add(voter);
        } else if (order.compare(voter, kept.element()) < 0) {
            kept.remove();
            kept.add(voter);
        }
    }

    private String surname(int voter) {
        RollIndex part = roll.part(voter);
        return part.words().surnames().text(part.columns().surname(roll.placeIn(voter)));
    }

    private String given(int voter) {
        RollIndex part = roll.part(voter);
        return part.words().givens().text(part.columns().given(roll.placeIn(voter)));
    }
}
