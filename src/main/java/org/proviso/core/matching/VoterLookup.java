package org.proviso.core.matching;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import java.util.function.IntPredicate;

/**
 * The staff's look-up: voters by the beginning of a name, by birth date, by address or by the beginning of a voter number.
 * It walks the whole roll once, which takes some hundredths of a second for a million voters, and looks at no string on
 * the way. Thread-safe.
 */
public final class VoterLookup {

    private final RollIndex index;
    private final RollColumns columns;
    private final RollWords words;

    public VoterLookup(RollIndex index) {
        this.index = index;
        columns = index.columns();
        words = index.words();
    }

    /**
     * The numbers of up to so many voters whose surname (or former surname) begins so, and the given name too where one is
     * given, in the order of their names.
     */
    public List<String> named(String surname, String given, int most) {
        String last = NameText.joined(NameText.fold(surname));
        if (last.isEmpty()) {
            return List.of();
        }
        boolean[] surnames = beginning(words.surnames(), last);
        String first = NameText.joined(NameText.fold(given));
        boolean[] givens = beginning(words.givens(), first);
        return first(
                most,
                voter -> (surnames[columns.surname(voter)] || surnames[columns.former(voter)])
                        && givens[columns.given(voter)]);
    }

    /** Those born on that day, in the order of their names. */
    public List<String> born(LocalDate on, int most) {
        int date = PackedDate.of(on);
        return date == PackedDate.UNKNOWN ? List.of() : first(most, voter -> columns.birth(voter) == date);
    }

    /** Those at an address: {@code 1204 Quarry} finds 1204 N Quarry St. Without a house number, the whole street. */
    public List<String> at(String line, int most) {
        StreetAddress address = AddressNormalizer.parse(line, "");
        StreetName street = StreetName.of(address.street());
        if (street.body().isEmpty()) {
            return List.of();
        }
        boolean[] streets = new boolean[words.streets().size()];
        for (int code = 0; code < streets.length; code++) {
            streets[code] = StreetName.of(words.streets().text(code)).body().startsWith(street.body());
        }
        int house = address.houseNumber();
        return first(most, voter -> (house == 0 || columns.house(voter) == house) && streets[columns.street(voter)]);
    }

    /** Those whose voter number begins so. */
    public List<String> numbered(String beginning, int most) {
        String wanted = beginning.strip();
        return wanted.isEmpty() ? List.of() : first(most, voter -> index.idBegins(voter, wanted));
    }

    private static boolean[] beginning(Dictionary names, String beginning) {
        boolean[] begins = new boolean[names.size()];
        for (int code = 0; code < begins.length; code++) {
            begins[code] =
                    beginning.isEmpty() || NameText.joined(names.text(code)).startsWith(beginning);
        }
        return begins;
    }

    /** The first by surname, given name and number: of many, only so many are kept on the way. */
    private List<String> first(int most, IntPredicate wanted) {
        Comparator<Integer> order = Comparator.comparing(
                        (Integer voter) -> words.surnames().text(columns.surname(voter)))
                .thenComparing(voter -> words.givens().text(columns.given(voter)))
                .thenComparing(index::voterId);
        PriorityQueue<Integer> kept = new PriorityQueue<>(order.reversed());
        for (int voter = 0; voter < index.size(); voter++) {
            if (wanted.test(voter)) {
                if (kept.size() < most) {
                    kept.add(voter);
                } else if (order.compare(voter, kept.element()) < 0) {
                    kept.remove();
                    kept.add(voter);
                }
            }
        }
        return kept.stream().sorted(order).map(index::voterId).toList();
    }
}
