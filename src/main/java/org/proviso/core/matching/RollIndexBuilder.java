package org.proviso.core.matching;

import java.util.HashMap;
import java.util.Map;
import org.proviso.core.Voter;

/** Takes roll records one by one and makes the index. Not thread-safe; of use once. */
public final class RollIndexBuilder {

    private final TextArena ids = new TextArena();
    private final RollWords words = new RollWords();
    private final IntColumn surname = new IntColumn();
    private final IntColumn former = new IntColumn();
    private final IntColumn given = new IntColumn();
    private final IntColumn middle = new IntColumn();
    private final IntColumn suffix = new IntColumn();
    private final IntColumn birth = new IntColumn();
    private final IntColumn house = new IntColumn();
    private final IntColumn street = new IntColumn();
    private final IntColumn door = new IntColumn();
    private final IntColumn zip = new IntColumn();
    private final IntColumn last4 = new IntColumn();
    private final IntColumn license = new IntColumn();
    private final Map<String, String> streets = new HashMap<>();
    private final Map<String, String> units = new HashMap<>();
    private boolean anyFormer;

    RollIndexBuilder() {}

    public RollIndexBuilder add(Voter voter) {
        return add(RollEntry.of(voter));
    }

    public RollIndexBuilder add(RollEntry entry) {
        ids.add(entry.voterId());
        addName(entry);
        birth.add(PackedDate.of(entry.birthDate()));
        addAddress(entry);
        last4.add(Numbers.last4(entry.idLast4()));
        license.add(Numbers.license(entry.driversLicense()));
        return this;
    }

    private void addName(RollEntry entry) {
        ParsedName name = ParsedName.of(entry.name());
        String formerName = FormerName.surname(entry.formerName(), name);
        surname.add(words.surnames().add(name.surname()));
        former.add(formerName.isEmpty() ? 0 : words.surnames().add(formerName));
        anyFormer |= !formerName.isEmpty();
        given.add(words.givens().add(name.given()));
        middle.add(name.middle().isEmpty() ? 0 : words.middles().add(name.middle()));
        suffix.add(name.suffix().ordinal());
    }

    private void addAddress(RollEntry entry) {
        StreetAddress number = AddressNumber.of(entry.houseNumber());
        String unit = units.computeIfAbsent(entry.unit(), AddressNumber::door);
        house.add(number.houseNumber());
        door.add(words.doors().add(unit.isEmpty() ? number.door() : unit));
        street.add(words.streets().add(streets.computeIfAbsent(entry.street(), AddressNormalizer::street)));
        zip.add(Numbers.zip(entry.zip()));
    }

    /** The index over all records added. */
    public RollIndex build() {
        ids.freeze();
        words.freeze();
        RollColumns columns = new RollColumns(
                surname.trimmed(),
                anyFormer ? former.trimmed() : new int[0],
                given.trimmed(),
                middle.trimmed(),
                suffix.bytes(),
                birth.trimmed(),
                house.trimmed(),
                street.trimmed(),
                door.trimmed(),
                zip.trimmed(),
                last4.chars(),
                license.trimmed());
        return new RollIndex(ids, words, columns, InvertedLists.of(columns, words));
    }
}
