package org.proviso.review;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;
import org.proviso.core.matching.Matcher;
import org.proviso.core.matching.RollIndex;
import org.proviso.core.matching.RollIndexBuilder;
import org.proviso.core.matching.RollUpdate;
import org.proviso.core.matching.UpdatedRoll;
import org.proviso.roll.RollService;
import org.proviso.roll.SnapshotKind;
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
class RollHolder {

    private static final Logger LOG = LoggerFactory.getLogger(RollHolder.class);

    /** More than this share of voters read otherwise, and counts of names made before are too old to keep. */
    private static final double MANY = 0.05;

    /** More, and the newer roll is another one: the differences would be no smaller than an index. */
    private static final double ANOTHER_ROLL = 0.5;

    /** The roll in use and one that is tried. */
    private static final int MOST_UPDATED = 2;

    /** A roll as it is asked: by what file it came from. */
    private record Held(String rollHash, UpdatedRoll roll, Matcher matcher) {

        static Held of(String rollHash, UpdatedRoll roll) {
            return new Held(rollHash, roll, new Matcher(roll));
        }
    }

    private final RollService roll;
    private final Map<String, Held> updated = new LinkedHashMap<>();
    private volatile @Nullable Held whole;
    private volatile boolean reading;

    RollHolder(RollService roll) {
        this.roll = roll;
    }

    /** The match over the roll in use. */
    Matcher matcher(String electionId) {
        return held(electionId).matcher();
    }

    /** The roll in use. */
    UpdatedRoll roll(String electionId) {
        return held(electionId).roll();
    }

    /** Whether who asks now waits until a roll is read. */
    boolean isReading() {
        return reading;
    }

    private Held held(String electionId) {
        String hash = roll.rollHash(electionId);
        Held last = whole;
        return last != null && last.rollHash().equals(hash) ? last : other(electionId, hash);
    }

    private synchronized Held other(String electionId, String hash) {
        Held last = whole;
        if (last != null && last.rollHash().equals(hash)) {
            return last;
        }
        Held known = updated.get(hash);
        if (known == null && last != null) {
            known = over(last, electionId, hash);
        }
        return known == null ? anew(electionId) : known;
    }

    /** The newer roll over the index there is, or null where it is another roll altogether. */
    private @Nullable Held over(Held last, String electionId, String hash) {
        OptionalInt from = roll.snapshotOf(electionId, last.rollHash());
        if (from.isEmpty()) {
            return null;
        }
        RollUpdate update = new RollUpdate();
        roll.changes(electionId, from.getAsInt(), roll.snapshotInUse(electionId, SnapshotKind.ROLL), update::add);
        int voters = last.roll().size();
        if (update.size() > ANOTHER_ROLL * voters) {
            return null;
        }
        Held held = Held.of(hash, update.over(last.roll().index()));
        updated.put(hash, held);
        if (updated.size() > MOST_UPDATED) {
            updated.remove(updated.keySet().iterator().next());
        }
        if (update.size() > MANY * voters) {
            afterwards(() -> renew(electionId));
        }
        return held;
    }

    private Held anew(String electionId) {
        reading = true;
        try {
            return keep(read(electionId));
        } finally {
            reading = false;
        }
    }

    /** Again where another roll was put in use meanwhile: the index must be of the file it is held under. */
    private Held read(String electionId) {
        String hash;
        RollIndexBuilder index;
        do {
            hash = roll.rollHash(electionId);
            index = RollIndex.builder();
            roll.entries(electionId, index::add);
        } while (!hash.equals(roll.rollHash(electionId)));
        return Held.of(hash, UpdatedRoll.of(index.build()));
    }

    private synchronized Held keep(Held held) {
        whole = held;
        updated.clear();
        return held;
    }

    /** Makes the index of the roll in use anew while the old one goes on answering. */
    private void renew(String electionId) {
        try {
            String hash = roll.rollHash(electionId);
            Held last = whole;
            if (last == null || !last.rollHash().equals(hash)) {
                keep(read(electionId));
            }
        } catch (RuntimeException e) {
            LOG.warn("The index of the roll of {} could not be made anew; the one before is used.", electionId, e);
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
