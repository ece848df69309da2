package org.proviso.review.door;

import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.function.Function;
import java.util.function.Supplier;
import org.proviso.access.OfficeUser;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.act.Refusal;
import org.proviso.review.EnvelopeCase;

/** Cases of one election held for one act, which is done on all of them or on none. */
public final class LockedCases {

    private final CaseDoor.Permitted permitted;
    private final SortedMap<EnvelopeKey, EnvelopeCase> seen;
    private final SortedSet<EnvelopeKey> held;
    private List<Refusal> refusals;

    LockedCases(CaseDoor.Permitted permitted, SortedMap<EnvelopeKey, EnvelopeCase> seen, SortedSet<EnvelopeKey> held) {
        if (seen.isEmpty()) {
            throw new IllegalArgumentException("an act on cases is about at least one");
        }
        this.permitted = permitted;
        this.seen = seen;
        this.held = held;
        this.refusals = permitted.steps().closed(seen.firstKey()).stream().toList();
    }

    /** The cases that the act is about, as they are before it. */
    public SortedMap<EnvelopeKey, EnvelopeCase> seen() {
        return seen;
    }

    /** Whoever acts. */
    public OfficeUser user() {
        return permitted.user();
    }

    /** Refused where this finds reasons, each about its envelope; looked at only while nothing before it did. */
    public LockedCases refuseAll(Supplier<List<Refusal>> reasons) {
        if (refusals.isEmpty()) {
            refusals = List.copyOf(reasons.get());
        }
        return this;
    }

    /** Saves the cases as they are after the act, unless it was refused; what was held with them can be assessed anew. */
    public SavedCases<List<EnvelopeCase>> save(
            Function<SortedMap<EnvelopeKey, EnvelopeCase>, List<EnvelopeCase>> saving) {
        return new SavedCases<>(
                        permitted,
                        seen.firstKey().electionId(),
                        refusals,
                        refusals.isEmpty() ? saving.apply(seen) : null)
                .holding(held);
    }
}
