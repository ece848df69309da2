package org.proviso.review.door;

import java.util.Collection;
import java.util.Map;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.proviso.access.AccessService;
import org.proviso.access.ActDoor;
import org.proviso.access.OfficeUser;
import org.proviso.access.Permission;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.UserName;
import org.proviso.core.adjudication.CaseReport;
import org.proviso.ledger.Actor;
import org.proviso.ledger.LedgerLine;
import org.proviso.review.CaseActSteps;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.assess.AssessmentService;
import org.springframework.stereotype.Component;

/**
 * The one door through which acts on cases go, always in this order: demand the permission, lock the cases in the order
 * of their keys, refuse what cannot be done now (in a closed election everything), save, assess anew what is touched,
 * record, announce to the later rooms. Each act runs in its service's transaction. Thread-safe.
 */
@Component
public class CaseDoor {

    private final ActDoor door;
    private final AccessService access;
    private final CaseActSteps steps;
    private final AssessmentService assessments;

    CaseDoor(ActDoor door, AccessService access, CaseActSteps steps, AssessmentService assessments) {
        this.door = door;
        this.access = access;
        this.steps = steps;
        this.assessments = assessments;
    }

    /** Whoever is signed in, if their role includes the act; what follows is that person's act. */
    public Permitted demand(Permission act) {
        OfficeUser user = door.demand(act).user();
        return new Permitted(act, user, user.actor());
    }

    /** Part of an act that goes on: whoever began it was asked already, and it is recorded as theirs. */
    public Permitted within(Actor by) {
        return new Permitted(null, null, by);
    }

    /** Somebody who may act on cases. */
    public final class Permitted {

        private final @Nullable Permission act;
        private final @Nullable OfficeUser user;
        private final Actor by;

        private Permitted(@Nullable Permission act, @Nullable OfficeUser user, Actor by) {
            this.act = act;
            this.user = user;
            this.by = by;
        }

        /** One case, in the version in which it was seen; on another one a stale edit. */
        public LockedCase lock(EnvelopeKey key, int version) {
            return lock(key, version, new TreeSet<>());
        }

        /** The same with other cases, which are assessed anew with it where the act says something new. */
        public LockedCase lock(EnvelopeKey key, int version, SortedSet<EnvelopeKey> others) {
            return new LockedCase(this, steps.lockWith(key, version, others), others);
        }

        /** One case as it is now, for what does not depend on how it stands. */
        public LockedCase lock(EnvelopeKey key) {
            return new LockedCase(this, steps.lock(key), new TreeSet<>());
        }

        /** Cases of one election, each in the version in which it was seen, with others that the act touches. */
        public LockedCases lockAll(Map<EnvelopeKey, Integer> versions, Collection<EnvelopeKey> others) {
            SortedSet<EnvelopeKey> held = new TreeSet<>(others);
            held.addAll(versions.keySet());
            SortedMap<EnvelopeKey, EnvelopeCase> seen = new TreeMap<>();
            for (EnvelopeKey key : held) {
                Integer version = versions.get(key);
                if (version == null) {
                    steps.lock(key);
                } else {
                    seen.put(key, steps.lock(key, version));
                }
            }
            return new LockedCases(this, seen, held);
        }

        /** Cases of one election as they are now. */
        public LockedCases lockAll(Collection<EnvelopeKey> keys) {
            SortedMap<EnvelopeKey, EnvelopeCase> seen = new TreeMap<>();
            new TreeSet<>(keys).forEach(key -> seen.put(key, steps.lock(key)));
            return new LockedCases(this, seen, new TreeSet<>(keys));
        }

        OfficeUser user() {
            if (user == null) {
                throw new IllegalStateException("a part of an act has nobody signed in");
            }
            return user;
        }

        Actor by() {
            return by;
        }

        CaseActSteps steps() {
            return steps;
        }

        void demandSomebodyElse(Collection<UserName> earlier) {
            if (act != null) {
                access.demandSomebodyElse(act, earlier);
            }
        }

        /** Assesses locked cases anew, records the act, and tells the later rooms how the cases stand. */
        void finish(
                SortedSet<EnvelopeKey> toAssess, SortedMap<EnvelopeKey, CaseReport> known, Supplier<LedgerLine> line) {
            SortedMap<EnvelopeKey, CaseReport> reports = toAssess.isEmpty() ? known : assessments.renew(toAssess);
            door.record(by, line.get());
            assessments.announce(reports);
        }
    }
}
