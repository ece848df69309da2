package org.proviso.roll;

import java.util.List;
import java.util.OptionalInt;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.proviso.core.ElectionId;
import org.proviso.core.matching.Matcher;
import org.proviso.core.matching.index.RollIndex;
import org.proviso.core.matching.index.RollIndexBuilder;
import org.proviso.core.matching.index.RollUpdate;
import org.proviso.core.matching.index.UpdatedRoll;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionSynchronization;
import org.springframework.transaction.support.TransactionSynchronizationManager;

/**
 * Holds the index of the roll asked for last. A newer roll that differs in part is answered from that index with its
 * differences over it; where they are many, a new index is made beside the requests once the newer roll is in use.
 * Thread-safe; who asks before there is any index waits for it.
 */
@Component
public class RollIndexCache {

    private static final Logger LOG = LoggerFactory.getLogger(RollIndexCache.class);

    /** More than this share of voters read otherwise, and counts of names made before are too old to keep. */
    private static final double MANY = 0.05;

    /** More, and the newer roll is another one: the differences would be no smaller than an index. */
    private static final double ANOTHER_ROLL = 0.5;

    /** The roll in use and one that is tried. */
    private static final int MOST_UPDATED = 2;

    /** A roll as it is asked: by what file it came from, and how many voters differ from the index under it. */
    private record HeldRoll(String rollHash, UpdatedRoll roll, Matcher matcher, int differing) {

        static HeldRoll of(String rollHash, UpdatedRoll roll, int differing) {
            return new HeldRoll(rollHash, roll, new Matcher(roll), differing);
        }

        boolean differsMuch() {
            return differing > MANY * roll.size();
        }
    }

    private final RollService roll;
    private final AtomicBoolean renewing = new AtomicBoolean();
    private volatile List<HeldRoll> updated = List.of();
    private volatile @Nullable HeldRoll whole;
    private volatile boolean reading;

    RollIndexCache(RollService roll) {
        this.roll = roll;
    }

    /** The match over the roll in use. */
    public Matcher matcher(ElectionId electionId) {
        return held(electionId).matcher();
    }

    /** The roll in use. */
    public UpdatedRoll roll(ElectionId electionId) {
        return held(electionId).roll();
    }

    /** Whether who asks now waits until a roll is read. */
    public boolean isReading() {
        return reading;
    }

    private HeldRoll held(ElectionId electionId) {
        String hash = roll.rollHash(electionId);
        HeldRoll known = known(hash);
        return known == null ? other(electionId, hash) : known;
    }

    private @Nullable HeldRoll known(String hash) {
        HeldRoll last = whole;
        if (last != null && last.rollHash().equals(hash)) {
            return last;
        }
        return updated.stream()
                .filter(held -> held.rollHash().equals(hash))
                .findFirst()
                .orElse(null);
    }

    private synchronized HeldRoll other(ElectionId electionId, String hash) {
        HeldRoll known = known(hash);
        HeldRoll last = whole;
        if (known == null && last != null) {
            known = over(last, electionId, hash);
        }
        return known == null ? anew(electionId) : known;
    }

    /** The newer roll over the index there is, or null where it is another roll altogether. */
    private @Nullable HeldRoll over(HeldRoll last, ElectionId electionId, String hash) {
        OptionalInt from = roll.snapshotOf(electionId, last.rollHash());
        OptionalInt to = roll.snapshotOf(electionId, hash);
        if (from.isEmpty() || to.isEmpty()) {
            return null;
        }
        RollUpdate update = new RollUpdate();
        roll.changes(electionId, from.getAsInt(), to.getAsInt(), update::add);
        if (update.size() > ANOTHER_ROLL * last.roll().size()) {
            return null;
        }
        HeldRoll held = HeldRoll.of(hash, update.over(last.roll().index()), update.size());
        updated = Stream.concat(Stream.of(held), updated.stream())
                .limit(MOST_UPDATED)
                .toList();
        return held;
    }

    /** A roll was put in use: where much differs from what is indexed, that is done anew once this is committed. */
    void used(ElectionId electionId) {
        if (held(electionId).differsMuch()) {
            afterwards(() -> renew(electionId));
        }
    }

    private HeldRoll anew(ElectionId electionId) {
        reading = true;
        try {
            return keep(read(electionId));
        } finally {
            reading = false;
        }
    }

    /** Again where another roll was put in use meanwhile: the index must be of the file it is held under. */
    private HeldRoll read(ElectionId electionId) {
        String hash;
        RollIndexBuilder index;
        do {
            hash = roll.rollHash(electionId);
            index = RollIndex.builder();
            roll.entries(electionId, index::add);
        } while (!hash.equals(roll.rollHash(electionId)));
        return HeldRoll.of(hash, UpdatedRoll.of(index.build()), 0);
    }

    private synchronized HeldRoll keep(HeldRoll held) {
        whole = held;
        updated = List.of();
        return held;
    }

    /** Makes the index of the roll in use anew while the old one goes on answering. */
    private void renew(ElectionId electionId) {
        if (!renewing.compareAndSet(false, true)) {
            return;
        }
        try {
            String hash = roll.rollHash(electionId);
            HeldRoll last = whole;
            if (last == null || !last.rollHash().equals(hash)) {
                keep(read(electionId));
            }
        } catch (RuntimeException e) {
            LOG.warn("The index of the roll of {} could not be made anew; the one before is used.", electionId, e);
        } finally {
            renewing.set(false);
        }
    }

    /** On a thread of its own, once what is being done is done: before, that thread would not see it. */
    private static void afterwards(Runnable work) {
        Runnable start = () -> {
            Thread thread = new Thread(work, "roll-reading");
            thread.setDaemon(true);
            thread.start();
        };
        if (!TransactionSynchronizationManager.isSynchronizationActive()) {
            start.run();
            return;
        }
        TransactionSynchronizationManager.registerSynchronization(new TransactionSynchronization() {
            @Override
            public void afterCommit() {
                start.run();
            }
        });
    }
}
