package org.proviso.election;

import java.nio.file.Path;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.proviso.access.AccessService;
import org.proviso.access.OfficeUser;
import org.proviso.access.Permission;
import org.proviso.core.Election;
import org.proviso.core.ElectionId;
import org.proviso.core.Envelope;
import org.proviso.core.VoterId;
import org.proviso.core.adjudication.finding.AddressLocator;
import org.proviso.core.adjudication.finding.BallotCatalog;
import org.proviso.files.ContentHash;
import org.proviso.files.election.ElectionFolder;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** Elections of the office: loaded whole or not at all, and only once. */
@Service
public class ElectionService {

    private final ElectionStore elections;
    private final BallotStore ballots;
    private final RulesService rules;
    private final StatisticsStore statistics;
    private final AccessService access;
    private final LedgerService ledger;
    private final LoadWatch watch;
    private final ApplicationEventPublisher rooms;

    /** By the hash of the files they came from. */
    private final Map<String, BallotCatalog> ballotBooks = new ConcurrentHashMap<>();

    private final Map<String, AddressLocator> addressBooks = new ConcurrentHashMap<>();

    ElectionService(
            ElectionStore elections,
            BallotStore ballots,
            StatisticsStore statistics,
            RulesService rules,
            AccessService access,
            LedgerService ledger,
            LoadWatch watch,
            ApplicationEventPublisher rooms) {
        this.elections = elections;
        this.ballots = ballots;
        this.rules = rules;
        this.statistics = statistics;
        this.access = access;
        this.ledger = ledger;
        this.watch = watch;
        this.rooms = rooms;
    }

    /**
     * Loads an election folder in one transaction with one entry in the ledger, the first of the election's chain. The
     * same files again are recognised and nothing is written. Throws {@link org.proviso.files.InputException} where a
     * file is not right, {@link ElectionRefusedException} where the election is there with other files or has a rule pack
     * that does not come with the program. The rules in force are kept with it.
     */
    @Transactional
    public LoadResult load(Path path) {
        OfficeUser supervisor = access.demand(Permission.LOAD_FILES);
        return watch.during(() -> load(path, supervisor));
    }

    private LoadResult load(Path path, OfficeUser supervisor) {
        watch.begin("The files are being looked at", 0);
        String hash = ContentHash.ofFolder(path);
        Optional<String> known = elections.withContent(hash);
        if (known.isPresent()) {
            return new LoadResult(new ElectionId(known.get()), true);
        }
        ElectionFolder folder = ElectionFolder.read(path, watch.begin("The files are being read and checked", 0));
        ElectionId id = folder.election().id();
        if (elections.find(id).isPresent()) {
            throw new ElectionRefusedException(
                    "The election " + id + " is in the office already, loaded from other files.");
        }
        elections.insert(folder.election(), hash);
        ballots.insert(id, folder);
        String rulesHash = rules.keep(id).pack().hash();
        rooms.publishEvent(new ElectionLoaded(id, folder));
        watch.begin("The tables are being made ready", 0);
        statistics.gather();
        LedgerChain chain = LedgerChain.of(id);
        ledger.open(chain);
        ledger.record(chain, supervisor.actor(), "election_loaded", id.value(), counts(folder, hash, rulesHash));
        watch.begin("What was written is being made final", 0);
        return new LoadResult(id, false);
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
        return elections.isClosed(electionId);
    }

    /** Closes an election, in the transaction of whoever found that its numbers add up. */
    @Transactional(propagation = Propagation.MANDATORY)
    public void close(ElectionId electionId) {
        elections.close(electionId);
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

    private static Map<String, Object> counts(ElectionFolder folder, String hash, String rulesHash) {
        Map<String, Object> counts = new LinkedHashMap<>();
        counts.put("content", hash);
        counts.put("rules", rulesHash);
        counts.put("contests", folder.contests().size());
        counts.put("styles", folder.styles().size());
        counts.put("voters", folder.voters().size());
        counts.put("mail_ballots", rows(folder.mailBallots()));
        counts.put("check_ins", rows(folder.checkIns()));
        counts.put("voted_elsewhere", folder.votedElsewhere().size());
        counts.put("transmittals", folder.transmittals().size());
        counts.put("envelopes", folder.envelopes().size());
        counts.put(
                "not_yet_keyed",
                folder.envelopes().stream()
                        .filter(ElectionService::waits)
                        .map(Envelope::envelopeNo)
                        .toList());
        return counts;
    }

    private static boolean waits(Envelope envelope) {
        return envelope.affirmation().fieldStates().containsValue(Envelope.FieldState.NOT_YET_KEYED);
    }

    private static int rows(Map<VoterId, ? extends List<?>> byVoter) {
        return byVoter.values().stream().mapToInt(List::size).sum();
    }
}
