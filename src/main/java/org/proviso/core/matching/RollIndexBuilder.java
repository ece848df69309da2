package org.proviso.core.matching;

import java.util.HashMap;
import java.util.Map;
import org.proviso.core.Voter;

/** Takes roll records one by one and makes the index. Not thread-safe; of use once. */
public final class RollIndexBuilder {

    private final TextArena ids = new TextArena();
    private final RollWords words = new RollWords();
    private final IntColumn cells = new IntColumn();
    private final IntColumn former = new IntColumn();
    private final Map<String, Integer> streets = new HashMap<>();
    private final Map<String, String> units = new HashMap<>();
    private boolean anyFormer;

    RollIndexBuilder() {}

    public RollIndexBuilder add(Voter voter) {
        return add(RollEntry.of(voter));
    }

    public RollIndexBuilder add(RollEntry entry) {
        ids.add(entry.voterId());
        ParsedName name = ParsedName.of(entry.name());
        addName(name, FormerName.surname(entry.formerName(), name));
        cells.add(PackedDate.of(entry.birthDate()));
        addAddress(entry);
        cells.add(Numbers.license(entry.driversLicense()));
        cells.add(RollColumns.packed(Numbers.last4(entry.idLast4()), name.suffix()));
        return this;
    }

    private void addName(ParsedName name, String formerSurname) {
        cells.add(words.surnames().add(name.surname()));
        cells.add(words.givens().add(name.given()));
        cells.add(name.middle().isEmpty() ? 0 : words.middles().add(name.middle()));
        former.add(formerSurname.isEmpty() ? 0 : words.surnames().add(formerSurname));
        anyFormer |= !formerSurname.isEmpty();
    }

    private void addAddress(RollEntry entry) {
        StreetAddress number = AddressNumber.of(entry.houseNumber());
        String unit = units.computeIfAbsent(entry.unit(), AddressNumber::door);
        cells.add(number.houseNumber());
        cells.add(street(entry.street()));
        cells.add(words.doors().add(unit.isEmpty() ? number.door() : unit));
        cells.add(Numbers.zip(entry.zip()));
    }

    /** A street comes thousands of times in one spelling: it is normalized once. */
    private int street(String written) {
        Integer known = streets.get(written);
        if (known != null) {
            return words.streets().again(known);
        }
        int code = words.streets().add(AddressNormalizer.street(written));
        streets.put(written, code);
        return code;
    }

    /** The index over all records added. */
    public RollIndex build() {
        ids.freeze();
        words.freeze();
        RollColumns columns = new RollColumns(cells.trimmed(), anyFormer ? former.trimmed() : new int[0]);
        return new RollIndex(ids, words, columns, InvertedLists.of(columns, words));
    }
}
