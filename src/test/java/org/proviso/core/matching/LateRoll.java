package org.proviso.core.matching;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.proviso.core.VoterId;
import org.proviso.core.matching.index.RollChange;
import org.proviso.core.matching.index.RollEntry;
import org.proviso.core.matching.index.RollIndex;
import org.proviso.core.matching.index.RollIndexBuilder;
import org.proviso.core.matching.index.RollUpdate;
import org.proviso.core.matching.index.UpdatedRoll;
import org.proviso.core.matching.late.NearVoters;
import org.proviso.core.matching.spelling.AddressNormalizer;
import org.proviso.core.matching.spelling.StreetAddress;

/** A newer roll of an invented county: voters gone, moved, married, corrected, and new ones, twins of voters among them. */
public final class LateRoll {

    public final List<RollChange> changes = new ArrayList<>();
    public final List<RollEntry> after = new ArrayList<>();

    private LateRoll() {}

    /** Only last four digits are corrected: no name, home or year becomes more or less common. */
    public static LateRoll corrected(MessyElection election, Random random) throws IOException {
        LateRoll late = new LateRoll();
        InventedTown town = new InventedTown(random);
        for (InventedPerson person : election.roll) {
            if (random.nextInt(20) == 0) {
                late.change(
                        person.entry(), person.born(person.born(), town.last4()).entry());
            } else {
                late.after.add(person.entry());
            }
        }
        return late;
    }

    /** One voter of twenty changes in some way. */
    public static LateRoll of(MessyElection election, Random random) throws IOException {
        LateRoll late = new LateRoll();
        late.change(election.roll, election.envelopes, random);
        return late;
    }

    private void change(List<InventedPerson> before, List<MatchQuery> envelopes, Random random) throws IOException {
        InventedTown town = new InventedTown(random);
        for (InventedPerson person : before) {
            int kind = random.nextInt(20) == 0 ? 1 + random.nextInt(7) : 0;
            switch (kind) {
                case 1 -> change(person.entry(), null);
                case 2 -> change(person.entry(), person.at(town.stranger()).entry());
                case 3 -> change(person.entry(), person.surnamed(town.surname()).entry());
                case 4 ->
                    change(
                            person.entry(),
                            person.born(person.born().plusDays(1), town.last4()).entry());
                case 5 -> change(person.entry(), person.entry());
                case 6 -> {
                    after.add(person.entry());
                    change(null, numbered("N" + person.id(), town.twinOf(person).entry()));
                }
                case 7 -> {
                    after.add(person.entry());
                    change(null, entry("M" + person.id(), envelopes.get(random.nextInt(envelopes.size()))));
                }
                default -> after.add(person.entry());
            }
        }
    }

    private void change(@Nullable RollEntry before, @Nullable RollEntry now) {
        changes.add(new RollChange(before, now));
        if (now != null) {
            after.add(now);
        }
    }

    /** Somebody who was not found registers after all. */
    private static RollEntry entry(String id, MatchQuery person) {
        StreetAddress home = AddressNormalizer.parse(person.residence());
        return new RollEntry(
                new VoterId(id),
                person.name(),
                "",
                person.birthDate(),
                String.valueOf(home.houseNumber()),
                home.street(),
                "",
                person.residence().zip(),
                person.idLast4(),
                "");
    }

    private static RollEntry numbered(String id, RollEntry entry) {
        return new RollEntry(
                new VoterId(id),
                entry.name(),
                entry.formerName(),
                entry.birthDate(),
                entry.houseNumber(),
                entry.street(),
                entry.unit(),
                entry.zip(),
                entry.idLast4(),
                entry.driversLicense());
    }

    public List<RollEntry> records(Set<VoterId> voterIds) {
        return after.stream()
                .filter(entry -> voterIds.contains(entry.voterId()))
                .toList();
    }

    public RollIndex rebuilt() {
        RollIndexBuilder builder = RollIndex.builder();
        after.forEach(builder::add);
        return builder.build();
    }

    public UpdatedRoll over(RollIndex index) {
        RollUpdate update = new RollUpdate();
        changes.forEach(update::add);
        return update.over(index);
    }

    public NearVoters near() {
        NearVoters near = new NearVoters();
        changes.forEach(near::add);
        return near;
    }
}
