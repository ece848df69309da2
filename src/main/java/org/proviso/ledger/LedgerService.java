package org.proviso.ledger;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.proviso.core.BetweenRooms;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.chain.ChainHead;
import org.proviso.core.chain.LedgerEntry;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/**
 * The ledger's only door. An act is recorded inside the transaction that does it, as that transaction's last step:
 * cases are locked first, the head of the chain last, and an election's chain before the office's. What goes in can be
 * shown to observers: codes, counts and envelope numbers; anything else only as a salted hash. Thread-safe.
 */
@BetweenRooms
@Service
public class LedgerService {

    private static final int PAGE = 1_000;

    private final LedgerStore store;
    private final Clock clock;

    LedgerService(LedgerStore store, Clock clock) {
        this.store = store;
        this.clock = clock;
    }

    /** Begins the chain of an election. The office's own is there from the start. */
    @Transactional(propagation = Propagation.MANDATORY)
    public void open(LedgerChain chain) {
        store.insertHead(chain, ChainHead.EMPTY);
    }

    /** Records an act at the end of a chain, at the server's time (UTC, to the millisecond). */
    @Transactional(propagation = Propagation.MANDATORY)
    public LedgerEntry record(LedgerChain chain, Actor actor, String act, String subject, Map<String, Object> payload) {
        return record(chain, actor, act, Map.of(subject, payload)).get(0);
    }

    /** Records the same act on several subjects, each in an entry of its own, in the order of the map. */
    @Transactional(propagation = Propagation.MANDATORY)
    public List<LedgerEntry> record(
            LedgerChain chain, Actor actor, String act, Map<String, Map<String, Object>> payloads) {
        ChainHead head = store.lockHead(chain);
        List<LedgerEntry> entries = new ArrayList<>();
        for (Map.Entry<String, Map<String, Object>> payload : payloads.entrySet()) {
            String at = clock.instant().truncatedTo(ChronoUnit.MILLIS).toString();
            LedgerEntry entry = head.next(at, actor.pseudonym(), act, payload.getKey(), payload.getValue());
            entries.add(entry);
            head = ChainHead.after(entry);
        }
        store.insert(chain, entries);
        store.moveHead(chain, head);
        return entries;
    }

    /** Where the chain ends now: its hash is printed on minutes and reports. */
    @Transactional(readOnly = true)
    public ChainHead head(LedgerChain chain) {
        return store.head(chain);
    }

    /** Up to {@code limit} entries that follow the entry of that number; from the start with 0. */
    @Transactional(readOnly = true)
    public List<LedgerEntry> read(LedgerChain chain, long after, int limit) {
        return store.rows(chain, after, limit).stream().map(LedgerRow::entry).toList();
    }

    /** Every entry about one subject, such as an envelope by its number, in their order. */
    @Transactional(readOnly = true)
    public List<LedgerEntry> about(LedgerChain chain, EnvelopeNumber subject) {
        return store.about(chain, subject).stream().map(LedgerRow::entry).toList();
    }

    /** Passes every entry of the chain as it is now to the follower, in order, a few in memory at a time. */
    @Transactional(readOnly = true)
    public void follow(LedgerChain chain, Consumer<LedgerEntry> follower) {
        long last = store.head(chain).sequence();
        for (long after = 0; after < last; after += PAGE) {
            read(chain, after, (int) Math.min(PAGE, last - after)).forEach(follower);
        }
    }

    /** Writes the chain as it stands now, one entry a line, as {@code verify-ledger} reads it. */
    @Transactional(readOnly = true)
    public void export(LedgerChain chain, Writer out) {
        follow(chain, entry -> write(entry, out));
    }

    /** Follows the whole chain to its head and names the first entry that does not fit. */
    @Transactional(readOnly = true)
    public LedgerVerdict verify(LedgerChain chain) {
        ChainFollower follower = new ChainFollower(store.head(chain));
        while (follower.goesOn()) {
            follower.follow(store.rows(chain, follower.sequence(), PAGE));
        }
        return follower.verdict();
    }

    private static void write(LedgerEntry entry, Writer out) {
        try {
            out.write(entry.line());
            out.write('\n');
        } catch (IOException e) {
            throw new UncheckedIOException("the ledger cannot be written: " + e.getMessage(), e);
        }
    }
}
