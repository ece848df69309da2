package org.proviso.election;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.proviso.access.ActDoor;
import org.proviso.access.Permission;
import org.proviso.core.ElectionId;
import org.proviso.core.Envelope;
import org.proviso.core.VoterId;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.chain.Sha256;
import org.proviso.files.ContentHash;
import org.proviso.files.election.ElectionFolder;
import org.proviso.files.packs.RulePacks;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerLine;
import org.proviso.ledger.LedgerService;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Loads an election from its folder of files: whole or not at all, and only once. */
@Service
public class ElectionLoadService {

    private final ElectionStore elections;
    private final BallotStore ballots;
    private final StatisticsStore statistics;
    private final RulesService rules;
    private final LedgerService ledger;
    private final ActDoor door;
    private final LoadWatch watch;
    private final AgreedLoadStore agreed;
    private final SetAsideShare share;

    ElectionLoadService(
            ElectionStore elections,
            BallotStore ballots,
            StatisticsStore statistics,
            RulesService rules,
            LedgerService ledger,
            ActDoor door,
            LoadWatch watch,
            AgreedLoadStore agreed,
            SetAsideShare share) {
        this.agreed = agreed;
        this.share = share;
        this.elections = elections;
        this.ballots = ballots;
        this.statistics = statistics;
        this.rules = rules;
        this.ledger = ledger;
        this.door = door;
        this.watch = watch;
    }

    private record LoadedFolder(
            ElectionFolder folder,
            String hash,
            String rulesHash,
            ElectionLoaded.@Nullable Aside aside,
            Map<String, Object> asideLine) {

        ElectionId id() {
            return folder.election().id();
        }
    }

    /**
     * Loads an election folder in one transaction with one entry in the ledger, the first of the election's chain. The
     * same files again are recognised and nothing is written. Refused where the election is there with other files, or
     * has a rule pack that does not come with the program; throws {@link org.proviso.files.InputException} where a file
     * is not right. The rules in force are kept with it.
     */
    @Transactional
    public ActResult<LoadResult> load(Path path) {
        ActDoor.Permitted supervisor = door.demand(Permission.LOAD_FILES);
        return watch.during(() -> load(path, supervisor));
    }

    private ActResult<LoadResult> load(Path path, ActDoor.Permitted supervisor) {
        watch.begin("The files are being looked at", 0);
        String hash = ContentHash.ofFolder(path);
        Optional<String> known = elections.withContent(hash);
        if (known.isPresent()) {
            return ActResult.accepted(new LoadResult(new ElectionId(known.get()), true));
        }
        return supervisor
                .lock(() -> ElectionFolder.read(path, watch.begin("The files are being read and checked", 0)))
                .refuse(this::isThere)
                .refuse(ElectionLoadService::packNotProved)
                .save(folder -> keep(folder, hash, null, Map.of()))
                .tell(loaded -> new ElectionLoaded(loaded.id(), loaded.folder(), loaded.aside()))
                .andThen(this::makeReady)
                .record(ElectionLoadService::line)
                .map(this::told);
    }

    private Optional<Refusal> isThere(ElectionFolder folder) {
        ElectionId id = folder.election().id();
        return Refusal.when(
                elections.find(id).isPresent(),
                Why.NUMBER_TAKEN,
                "The election " + id + " is in the office already, loaded from other files.");
    }

    private static Optional<Refusal> packNotProved(ElectionFolder folder) {
        String pack = folder.election().rulePack();
        return Refusal.when(
                !RulePacks.bundled().contains(pack),
                Why.NO_SUCH_RULE_PACK,
                "The rule pack " + pack + " does not come with the program, and only those that do are proved.");
    }

    /**
     * Looks at a folder with bad rows in its outside lists: which would be left out. Throws {@link
     * org.proviso.files.InputException} where another file is not right either. Nothing is written.
     */
    @Transactional(readOnly = true)
    public LookedAtFolder look(Path path) {
        ActDoor.Permitted supervisor = door.demand(Permission.LOAD_FILES);
        String hash = ContentHash.ofFolder(path);
        try (FolderWithoutRows read = read(path, hash)) {
            return new LookedAtFolder(
                    read.folder().setAside(),
                    read.first(),
                    read.rowsHash(),
                    read.needsTwo(share),
                    agreed.find(read.id(), hash, read.rowsHash())
                            .filter(earlier -> !isOf(earlier, supervisor))
                            .map(AgreedLoadStore.Agreed::because));
        }
    }

    /**
     * Loads an election without the rows of its outside lists that could not be read, which are kept as they came, for a
     * reason. Above the office's share the first person's word waits until a second one loads the same files.
     * {@code seenHash} is of the rows that whoever decides has seen.
     */
    @Transactional
    public ActResult<LoadResult> loadWithoutAside(Path path, String seenHash, String because) {
        ActDoor.Permitted supervisor = door.demand(Permission.LOAD_FILES);
        return watch.during(() -> {
            String hash = ContentHash.ofFolder(path);
            Optional<String> known = elections.withContent(hash);
            if (known.isPresent()) {
                return ActResult.accepted(new LoadResult(new ElectionId(known.get()), true));
            }
            try (FolderWithoutRows read = read(path, hash)) {
                return loadWithoutAside(read, hash, new Decided(supervisor, seenHash, because.strip()));
            }
        });
    }

    private FolderWithoutRows read(Path path, String hash) {
        return FolderWithoutRows.read(path, hash, watch.begin("The files are being read and checked", 0));
    }

    /** Who goes without which rows, and why. */
    private record Decided(ActDoor.Permitted by, String seenHash, String because) {}

    private ActResult<LoadResult> loadWithoutAside(FolderWithoutRows read, String hash, Decided decided) {
        Optional<AgreedLoadStore.Agreed> earlier = agreed.find(read.id(), hash, read.rowsHash());
        ActDoor.Locked<ElectionFolder> locked = decided.by()
                .lock(read::folder)
                .refuse(this::isThere)
                .refuse(ElectionLoadService::packNotProved)
                .refuse(folder ->
                        Refusal.when(decided.because().isEmpty(), Why.NO_REASON, "Required. Enter the reason."))
                .refuse(folder -> Refusal.when(
                        !read.rowsHash().equals(decided.seenHash()),
                        Why.NOTHING_NEW,
                        "These are not the files that were looked at. Load them again."));
        Map<String, Object> line = asideLine(read, decided.because());
        if (!read.needsTwo(share)
                || earlier.filter(one -> !isOf(one, decided.by())).isPresent()) {
            ElectionLoaded.Aside aside = new ElectionLoaded.Aside(
                    read.rows(), decided.because(), decided.by().user().userName());
            return locked.save(folder -> keep(folder, hash, aside, line))
                    .tell(loaded -> new ElectionLoaded(loaded.id(), loaded.folder(), loaded.aside()))
                    .andThen(this::makeReady)
                    .record(ElectionLoadService::line)
                    .map(this::told);
        }
        return locked.refuse(folder -> Refusal.when(
                        earlier.isPresent(),
                        Why.OWN_ACT,
                        "You agreed already. A second person must load the same files."))
                .save(folder -> agree(folder, hash, read, decided))
                .record(id -> LedgerLine.of(LedgerChain.OFFICE, "load_waits_for_second", id.value(), line))
                .map(id -> new LoadResult(id, false, true));
    }

    private ElectionId agree(ElectionFolder folder, String hash, FolderWithoutRows read, Decided decided) {
        agreed.add(
                read.id(),
                hash,
                read.rowsHash(),
                decided.because(),
                decided.by().user().userName());
        return folder.election().id();
    }

    private static boolean isOf(AgreedLoadStore.Agreed earlier, ActDoor.Permitted person) {
        return earlier.by().equals(person.user().userName());
    }

    /** What observers read of rows set aside: how many, and hashes of the rows and of the reason. */
    private static Map<String, Object> asideLine(FolderWithoutRows read, String because) {
        Map<String, Object> line = new LinkedHashMap<>();
        line.put("set_aside", new TreeMap<>(read.folder().setAside()));
        line.put("set_aside_hash", read.rowsHash());
        line.put("because", Sha256.of(because));
        return line;
    }

    private LoadedFolder keep(
            ElectionFolder folder, String hash, ElectionLoaded.@Nullable Aside aside, Map<String, Object> asideLine) {
        ElectionId id = folder.election().id();
        elections.insert(folder.election(), hash);
        ballots.insert(id, folder);
        return new LoadedFolder(folder, hash, rules.keep(id).pack().hash(), aside, asideLine);
    }

    private void makeReady(LoadedFolder loaded) {
        watch.begin("The tables are being made ready", 0);
        statistics.gather();
        ledger.open(LedgerChain.of(loaded.id()));
    }

    private LoadResult told(LoadedFolder loaded) {
        watch.begin("What was written is being made final", 0);
        return new LoadResult(loaded.id(), false);
    }

    private static LedgerLine line(LoadedFolder loaded) {
        return LedgerLine.of(
                LedgerChain.of(loaded.id()), "election_loaded", loaded.id().value(), counts(loaded));
    }

    private static Map<String, Object> counts(LoadedFolder loaded) {
        ElectionFolder folder = loaded.folder();
        Map<String, Object> counts = new LinkedHashMap<>();
        counts.put("content", loaded.hash());
        counts.put("rules", loaded.rulesHash());
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
                        .filter(ElectionLoadService::waits)
                        .map(Envelope::envelopeNo)
                        .toList());
        counts.putAll(loaded.asideLine());
        return counts;
    }

    private static boolean waits(Envelope envelope) {
        return envelope.affirmation().fieldStates().containsValue(Envelope.FieldState.NOT_YET_KEYED);
    }

    private static int rows(Map<VoterId, ? extends List<?>> byVoter) {
        return byVoter.values().stream().mapToInt(List::size).sum();
    }
}
