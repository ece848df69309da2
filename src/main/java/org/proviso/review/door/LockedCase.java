package org.proviso.review.door;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import org.proviso.access.OfficeUser;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.UserName;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.review.CaseAct;
import org.proviso.review.CaseGraph;
import org.proviso.review.EnvelopeCase;

/** A case held for an act, and why the act cannot be done now, if it cannot. Reasons are looked for in their order. */
public final class LockedCase {

    private final CaseDoor.Permitted permitted;
    private final EnvelopeCase seen;
    private final SortedSet<EnvelopeKey> others;
    private List<Refusal> refusals;

    LockedCase(CaseDoor.Permitted permitted, EnvelopeCase seen, SortedSet<EnvelopeKey> others) {
        this.permitted = permitted;
        this.seen = seen;
        this.others = others;
        this.refusals = permitted.steps().closed(seen.key()).stream().toList();
    }

    /** The case as it is before the act. */
    public EnvelopeCase seen() {
        return seen;
    }

    /** Whoever acts. */
    public OfficeUser user() {
        return permitted.user();
    }

    /** Refused where this finds a reason; looked at only while nothing before it did. */
    public LockedCase refuse(Supplier<Optional<Refusal>> reason) {
        return refuseAll(() -> reason.get().stream().toList());
    }

    /** The same with every reason at once. */
    public LockedCase refuseAll(Supplier<List<Refusal>> reasons) {
        if (refusals.isEmpty()) {
            refusals = List.copyOf(reasons.get());
        }
        return this;
    }

    /** Whoever works on a case has taken it. */
    public LockedCase withYou() {
        return refuse(() -> permitted.steps().notWith(seen, user()));
    }

    /** The graph of a case has this act in the state it is in. */
    public LockedCase allows(CaseAct act) {
        return refuse(() -> CaseGraph.refusal(seen.state(), act));
    }

    /** Whether something stands in the way, for an act that has to work out much before it looks further. */
    public boolean isRefused() {
        return !refusals.isEmpty();
    }

    /** What stands in the way, where {@link #isRefused}. */
    public ActResult<EnvelopeCase> refusal() {
        return new ActResult.Refused<>(refusals);
    }

    /** Nobody who acted on it before does this too. */
    public LockedCase notBy(Supplier<? extends Collection<UserName>> earlier) {
        if (refusals.isEmpty()) {
            permitted.demandSomebodyElse(earlier.get());
        }
        return this;
    }

    /** Saves the case as it is after the act, unless it was refused. */
    public SavedCase save(UnaryOperator<EnvelopeCase> saving) {
        return new SavedCase(
                seen.key(),
                others,
                new SavedCases<>(
                        permitted, seen.key().electionId(), refusals, refusals.isEmpty() ? saving.apply(seen) : null));
    }
}
