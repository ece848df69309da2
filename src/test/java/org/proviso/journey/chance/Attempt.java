package org.proviso.journey.chance;

import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.function.Supplier;
import org.proviso.access.Permission;
import org.proviso.core.act.ActResult;

/**
 * Something that one of the staff tries to do.
 *
 * @param needs what whoever does it must be permitted
 * @param stale whether it comes with an old version
 * @param maybeStale whether what it rests on changed since, so that it may be told to be stale
 * @param ofTwo whether somebody else must have done the part before it; for that person it is not permitted
 * @param hasEntry whether what came of it has an entry in the ledger
 * @param then what follows from it for the plain figures
 */
record Attempt<T>(
        String who,
        String words,
        Permission needs,
        Supplier<ActResult<T>> act,
        boolean stale,
        boolean maybeStale,
        boolean ofTwo,
        Predicate<T> hasEntry,
        Consumer<T> then) {

    static <T> Attempt<T> of(String who, Permission needs, String words, Supplier<ActResult<T>> act) {
        return new Attempt<>(who, words, needs, act, false, false, false, any -> true, any -> {});
    }

    Attempt<T> with(Version version) {
        return new Attempt<>(who, words, needs, act, version.stale(), maybeStale, ofTwo, hasEntry, then);
    }

    Attempt<T> orStale(boolean changed) {
        return new Attempt<>(who, words, needs, act, stale, changed, ofTwo, hasEntry, then);
    }

    Attempt<T> ofTwoPeople() {
        return new Attempt<>(who, words, needs, act, stale, maybeStale, true, hasEntry, then);
    }

    Attempt<T> entered(Predicate<T> which) {
        return new Attempt<>(who, words, needs, act, stale, maybeStale, ofTwo, which, then);
    }

    Attempt<T> then(Consumer<T> follows) {
        return new Attempt<>(who, words, needs, act, stale, maybeStale, ofTwo, hasEntry, follows);
    }

    /** A version as somebody has it on the screen, now and then an old one. */
    record Version(int number, boolean stale) {}
}
