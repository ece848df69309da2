package org.proviso.election;

import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.proviso.core.BetweenRooms;
import org.proviso.core.Election;
import org.proviso.core.ElectionId;
import org.proviso.core.act.Refusal;
import org.proviso.core.adjudication.finding.AddressLocator;
import org.proviso.core.adjudication.finding.BallotCatalog;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** The loaded elections: what each was loaded with, and whether it is closed. For services. Thread-safe. */
@BetweenRooms
@Service
public class ElectionService {

    private final ElectionStore elections;
    private final ElectionLockStore locks;
    private final BallotStore ballots;

    /** By the hash of the files they came from. */
    private final Map<String, BallotCatalog> ballotBooks = new ConcurrentHashMap<>();

    private final Map<String, AddressLocator> addressBooks = new ConcurrentHashMap<>();

    ElectionService(ElectionStore elections, ElectionLockStore locks, BallotStore ballots) {
        this.locks = locks;
        this.elections = elections;
        this.ballots = ballots;
    }

    @Transactional(readOnly = true)
    public Optional<Election> find(ElectionId electionId) {
        return elections.find(electionId);
    }

    /** The county's time zone; throws {@link IllegalArgumentException} where there is no such election. */
    @Transactional(readOnly = true)
    public ZoneId zone(ElectionId electionId) {
        return elections
                .zone(electionId)
                .orElseThrow(() -> new IllegalArgumentException("The office has no election \"" + electionId + "\"."));
    }

    /** Whether the election was closed: its cases are read from then on, and nothing about them changes. */
    @Transactional(readOnly = true)
    public boolean isClosed(ElectionId electionId) {
        return locks.isClosed(electionId);
    }

    /** Why nothing about an election changes any more: it is closed. Empty while it is open. */
    @Transactional(readOnly = true)
    public Optional<Refusal> closed(ElectionId electionId) {
        return Refusal.when(
                locks.isClosed(electionId),
                Refusal.Why.ELECTION_CLOSED,
                "The election is closed. Nothing about it can change.");
    }

    /** Waits for every act on the election that goes on, and lets none begin, until the closing has ended. */
    @Transactional(propagation = Propagation.MANDATORY)
    public void holdForClosing(ElectionId electionId) {
        locks.lock(electionId);
    }

    /** Closes an election, in the transaction of whoever found that its numbers add up. */
    @Transactional(propagation = Propagation.MANDATORY)
    public void close(ElectionId electionId) {
        elections.close(electionId);
    }

    /** Opens a closed election again, in the transaction of the two who reopen its canvass. */
    @Transactional(propagation = Propagation.MANDATORY)
    public void reopen(ElectionId electionId) {
        elections.reopen(electionId);
    }

    /** The ids of all elections, the newest election first. */
    @Transactional(readOnly = true)
    public List<ElectionId> all() {
        return elections.ids();
    }

    /** What is on the ballots of an election and which precinct part gets which; read once, it never changes. */
    @Transactional(readOnly = true)
    public BallotCatalog ballots(ElectionId electionId) {
        return ballotBooks.computeIfAbsent(
                elections.contentHash(electionId),
                any -> new BallotCatalog(
                        ballots.contests(electionId.value()),
                        ballots.styles(electionId.value()),
                        ballots.precincts(electionId.value())));
    }

    /** The street file of an election, made ready for looking up; read once, it never changes. */
    @Transactional(readOnly = true)
    public AddressLocator addresses(ElectionId electionId) {
        return addressBooks.computeIfAbsent(
                elections.contentHash(electionId), any -> new AddressLocator(ballots.streets(electionId.value())));
    }
}
