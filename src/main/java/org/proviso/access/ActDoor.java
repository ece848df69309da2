package org.proviso.access;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.proviso.core.UserName;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.ledger.Actor;
import org.proviso.ledger.LedgerLine;
import org.proviso.ledger.LedgerService;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Component;

/**
 * The one door through which a person's act goes, always in this order: demand the permission, lock what it is about,
 * refuse what cannot be done now, save, tell the rooms that act on it too, record it in the ledger, announce it. A
 * service gives each step what is particular to its act, inside its own transaction. Thread-safe.
 */
@Component
public class ActDoor {

    private final AccessService access;
    private final LedgerService ledger;
    private final ApplicationEventPublisher rooms;
    private final StaffList staff;

    ActDoor(AccessService access, LedgerService ledger, ApplicationEventPublisher rooms, StaffList staff) {
        this.access = access;
        this.ledger = ledger;
        this.rooms = rooms;
        this.staff = staff;
    }

    /** Nobody reads a user name where a person is meant. */
    private List<Refusal> named(List<Refusal> refusals) {
        return refusals.stream()
                .map(refusal -> refusal.named(userName -> staff.user(new UserName(userName))
                        .map(OfficeUser::fullName)
                        .orElse(userName)))
                .toList();
    }

    /** Whoever is signed in, if their role includes the act; {@link NotPermittedException} otherwise. */
    public Permitted demand(Permission act) {
        return new Permitted(act, access.demand(act));
    }

    /** Whoever is signed in, for the one act that the holder of a one-time password may do. */
    Permitted demandSignedIn() {
        return new Permitted(null, access.demandSignedIn());
    }

    /** Records what belongs to an act that goes on, or what the program itself does: joins the transaction. */
    public void record(Actor by, LedgerLine line) {
        ledger.record(line.chain(), by, line.act(), line.payloads());
    }

    /** Somebody who may do the act. */
    public final class Permitted {

        private final @Nullable Permission act;
        private final OfficeUser user;

        private Permitted(@Nullable Permission act, OfficeUser user) {
            this.act = act;
            this.user = user;
        }

        public OfficeUser user() {
            return user;
        }

        /** Reads what the act is about, held for the transaction; one that is not there or is stale throws. */
        public <S> Locked<S> lock(Supplier<S> locked) {
            return new Locked<>(this, locked.get());
        }

        /** For an act about nothing that others could change meanwhile. */
        public Locked<OfficeUser> lockNothing() {
            return new Locked<>(this, user);
        }
    }

    /** What the act is about, and why it cannot be done now, if it cannot. */
    public final class Locked<S> {

        private final Permitted permitted;
        private final S subject;
        private List<Refusal> refusals = List.of();

        private Locked(Permitted permitted, S subject) {
            this.permitted = permitted;
            this.subject = subject;
        }

        public S subject() {
            return subject;
        }

        /** Nobody who acted on it before does this too; {@link NotPermittedException} for one of them. */
        public Locked<S> notBy(Function<S, ? extends Collection<UserName>> earlier) {
            if (refusals.isEmpty() && permitted.act != null) {
                access.demandSomebodyElse(permitted.act, earlier.apply(subject));
            }
            return this;
        }

        /** Refused where this finds a reason; looked at only while nothing before it did. */
        public Locked<S> refuse(Function<S, Optional<Refusal>> reason) {
            return refuseAll(found -> reason.apply(found).stream().toList());
        }

        /** The same with every reason at once. */
        public Locked<S> refuseAll(Function<S, List<Refusal>> reasons) {
            if (refusals.isEmpty()) {
                refusals = named(reasons.apply(subject));
            }
            return this;
        }

        /** Saves, unless it was refused. */
        public <T> Saved<T> save(Function<S, T> saving) {
            return refusals.isEmpty()
                    ? new Saved<>(permitted.user, List.of(), saving.apply(subject))
                    : new Saved<>(permitted.user, refusals, null);
        }

        /** The same where saving goes through the act of another room, which may refuse it too. */
        public <T> Saved<T> saveOrRefuse(Function<S, ActResult<T>> saving) {
            ActResult<T> result = refusals.isEmpty() ? saving.apply(subject) : new ActResult.Refused<>(refusals);
            return new Saved<>(
                    permitted.user,
                    named(result.refusals()),
                    result.ifAccepted().orElse(null));
        }
    }

    /** What was saved and is to be recorded; after a refusal nothing of this happens. */
    public final class Saved<T> {

        private final OfficeUser user;
        private final List<Refusal> refusals;
        private final @Nullable T now;
        private final List<Function<T, ?>> news = new ArrayList<>();

        private Saved(OfficeUser user, List<Refusal> refusals, @Nullable T now) {
            this.user = user;
            this.refusals = refusals;
            this.now = now;
        }

        /** Tells the later rooms at once, which act on it too, before the head of the ledger is locked. */
        public Saved<T> tell(Function<T, ?> event) {
            if (now != null) {
                rooms.publishEvent(event.apply(now));
            }
            return this;
        }

        /** The same where there is something to tell. */
        public Saved<T> tellIfAny(Function<T, ? extends Optional<?>> event) {
            if (now != null) {
                event.apply(now).ifPresent(rooms::publishEvent);
            }
            return this;
        }

        /** Does what is left to do once the later rooms have done their part, before the entry. */
        public Saved<T> andThen(Consumer<T> rest) {
            if (now != null) {
                rest.accept(now);
            }
            return this;
        }

        /** Tells the later rooms how things are, once it is recorded. */
        public Saved<T> announce(Function<T, ?> event) {
            news.add(event);
            return this;
        }

        /** Records the act; nothing is locked after this. */
        public ActResult<T> record(Function<T, LedgerLine> line) {
            return finish(done -> ActDoor.this.record(user.actor(), line.apply(done)));
        }

        /** Records the act where it changed something. */
        public ActResult<T> recordIfAny(Function<T, Optional<LedgerLine>> line) {
            return finish(done -> line.apply(done).ifPresent(entry -> ActDoor.this.record(user.actor(), entry)));
        }

        /** Records an act that comes to several, each in an entry of its own. */
        public ActResult<T> recordEach(Function<T, List<LedgerLine>> lines) {
            return finish(done -> lines.apply(done).forEach(line -> ActDoor.this.record(user.actor(), line)));
        }

        /** For what the ledger does not have: a draft, a vote that is noted and not closed yet. */
        public ActResult<T> withoutEntry() {
            return finish(done -> {});
        }

        private ActResult<T> finish(Consumer<T> recording) {
            T done = now;
            if (done == null) {
                return new ActResult.Refused<>(refusals);
            }
            recording.accept(done);
            news.forEach(event -> rooms.publishEvent(event.apply(done)));
            return ActResult.accepted(done);
        }
    }
}
