package org.proviso.review.news;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.proviso.access.AccessService;
import org.proviso.access.ActDoor;
import org.proviso.access.OfficeUser;
import org.proviso.access.Permission;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.UserName;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.chain.Sha256;
import org.proviso.election.ElectionService;
import org.proviso.election.SetAsideShare;
import org.proviso.files.InputException;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerLine;
import org.proviso.roll.SnapshotKind;
import org.proviso.roll.SnapshotService;
import org.proviso.roll.StagedList;
import org.proviso.roll.aside.MendRow;
import org.proviso.roll.aside.SetAsideList;
import org.springframework.stereotype.Service;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.TransactionDefinition;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Newer rolls, mail-ballot lists, check-ins and lists of the state. One takes the place of the list before in one step
 * with everything that follows from it; where decided cases would be judged otherwise, a second person confirms first.
 */
@Service
public class NewerFileService {

    private static final String UNREAD =
            "%d rows of this list could not be read. Decide first whether it is used without them.";

    private final ElectionService elections;
    private final SnapshotService snapshots;
    private final AffectedCases touched;
    private final CaseRecheck watch;
    private final UnconfirmedListStore waiting;
    private final AccessService access;
    private final ActDoor door;
    private final SetAsideShare share;
    private final TransactionTemplate tried;

    NewerFileService(
            ElectionService elections,
            SnapshotService snapshots,
            AffectedCases touched,
            CaseRecheck watch,
            UnconfirmedListStore waiting,
            AccessService access,
            ActDoor door,
            SetAsideShare share,
            PlatformTransactionManager transactions) {
        this.share = share;
        this.elections = elections;
        this.snapshots = snapshots;
        this.touched = touched;
        this.watch = watch;
        this.waiting = waiting;
        this.access = access;
        this.door = door;
        this.tried = new TransactionTemplate(transactions);
        this.tried.setPropagationBehavior(TransactionDefinition.PROPAGATION_NESTED);
    }

    /** Reads a newer file and puts it in use, or lets it wait for a second person. A bad file changes nothing. */
    @Transactional
    public NewListResult load(ElectionId electionId, SnapshotKind kind, Path file) {
        OfficeUser user = access.demand(Permission.LOAD_FILES);
        Optional<Refusal> closed = elections.closed(electionId);
        if (closed.isPresent()) {
            return new NewListResult.Refused(closed.get());
        }
        StagedList staged = snapshots.stage(electionId, kind, file);
        return put(electionId, staged, user, false);
    }

    /** The lists that wait for a second person. */
    @Transactional(readOnly = true)
    public List<UnconfirmedList> waiting(ElectionId electionId) {
        access.demand(Permission.LOAD_FILES);
        return waiting.waiting(electionId);
    }

    /** How many rows of the lists in use could not be read and are set aside. */
    @Transactional(readOnly = true)
    public int asideInUse(ElectionId electionId) {
        access.demand(Permission.LOAD_FILES);
        return snapshots.asideInUse(electionId);
    }

    /** Which cases a staged list would change were it in use now; it is tried and taken back, and nothing is written. */
    @Transactional
    public List<CaseDifference> wouldChange(ElectionId electionId, int snapshotNo) {
        OfficeUser user = access.demand(Permission.LOAD_FILES);
        StagedList staged = snapshots.staged(electionId, snapshotNo);
        if (staged.snapshotNo() == staged.inUseNo()) {
            return List.of();
        }
        return Objects.requireNonNull(tried.execute(attempt -> {
            List<CaseDifference> changed = use(electionId, staged, user);
            attempt.setRollbackOnly();
            return changed;
        }));
    }

    /** Confirms a list that somebody else brought and that changes what was decided. */
    @Transactional
    public NewListResult confirm(ElectionId electionId, int snapshotNo) {
        access.demand(Permission.LOAD_FILES);
        UserName broughtBy = new UserName(waiting.broughtBy(electionId, snapshotNo)
                .orElseThrow(() -> new IllegalArgumentException("No list " + snapshotNo + " waits for anybody.")));
        OfficeUser user = access.demandSomebodyElse(Permission.LOAD_FILES, List.of(broughtBy));
        Optional<Refusal> closed = elections.closed(electionId);
        if (closed.isPresent()) {
            return new NewListResult.Refused(closed.get());
        }
        if (snapshots.isOvertaken(electionId, snapshotNo)) {
            return new NewListResult.Refused(Refusal.of(
                    Why.NOTHING_NEW,
                    "Another list is in use since the row was mended. Mend the row of that list again."));
        }
        waiting.confirm(electionId, snapshotNo, user.userName());
        return put(electionId, snapshots.staged(electionId, snapshotNo), user, true);
    }

    /**
     * Decides to use a staged list without the rows that are set aside, and why, and puts it in use. Above the office's
     * share it waits for a second person, as one that changes decided cases does. {@code seenHash} is of the rows that
     * whoever decides has seen.
     */
    @Transactional
    public NewListResult useWithoutAside(ElectionId electionId, int snapshotNo, String seenHash, String because) {
        OfficeUser user = access.demand(Permission.LOAD_FILES);
        Optional<StagedList> staged = snapshots.find(electionId, snapshotNo);
        Optional<Refusal> refusal = elections
                .closed(electionId)
                .or(() -> Refusal.when(because.isBlank(), Why.NO_REASON, "Required. Enter the reason."))
                .or(() -> goneOrDecided(staged, seenHash));
        if (refusal.isPresent()) {
            return new NewListResult.Refused(refusal.get());
        }
        snapshots.useWithoutAside(electionId, snapshotNo, because.strip(), user.userName());
        return put(electionId, snapshots.staged(electionId, snapshotNo), user, false);
    }

    /** Refuses a file with bad rows that nobody decided to use: nothing of it is kept, and there is no entry. */
    @Transactional
    public NewListResult refuseFile(ElectionId electionId, int snapshotNo, String seenHash) {
        access.demand(Permission.LOAD_FILES);
        Optional<StagedList> staged = snapshots.find(electionId, snapshotNo);
        Optional<Refusal> refusal = elections.closed(electionId).or(() -> goneOrDecided(staged, seenHash));
        if (refusal.isPresent()) {
            return new NewListResult.Refused(refusal.get());
        }
        snapshots.remove(electionId, snapshotNo);
        return new NewListResult.FileRefused(snapshotNo);
    }

    /**
     * Mends a row of a list in use that was set aside: the list with this row becomes a newer one and takes its place, as
     * every newer list does. A row that still does not read is refused, and so is one whose key the list has.
     */
    @Transactional
    public NewListResult mend(MendRow row) {
        OfficeUser user = access.demand(Permission.LOAD_FILES);
        Optional<StagedList> list = snapshots.find(row.electionId(), row.snapshotNo());
        Optional<Refusal> refusal = elections
                .closed(row.electionId())
                .or(() -> Refusal.when(row.because().isBlank(), Why.NO_REASON, "Required. Enter the reason."))
                .or(() -> Refusal.when(
                        list.isEmpty()
                                || list.get().snapshotNo() != list.get().inUseNo()
                                || !list.get().aside().rowsHash().equals(row.seenHash()),
                        Why.NOTHING_NEW,
                        "Another list is in use meanwhile. Load the page again and look whether it has this row."));
        if (refusal.isPresent()) {
            return new NewListResult.Refused(refusal.get());
        }
        try {
            return snapshots
                    .mend(row, user.userName())
                    .map(newer -> put(row.electionId(), newer, user, false))
                    .orElseGet(() -> new NewListResult.Refused(Refusal.of(
                            Why.NUMBER_TAKEN,
                            "The list has a row of this voter (and ballot) already. Nothing was changed.")));
        } catch (InputException wrong) {
            return new NewListResult.Refused(Refusal.at(wrong.column(), Why.MISTYPED, wrong.reason()));
        }
    }

    /** Another file may have got the number of one that was refused. */
    private static Optional<Refusal> goneOrDecided(Optional<StagedList> staged, String seenHash) {
        if (staged.isEmpty() || !staged.get().aside().rowsHash().equals(seenHash)) {
            return Optional.of(Refusal.of(
                    Why.NOTHING_NEW,
                    "This file was refused by somebody else meanwhile. Choose it again to read it anew."));
        }
        return Refusal.when(
                staged.get().aside().isSettled(),
                Why.NOTHING_NEW,
                "Somebody already decided about the rows of this list. Load the page again to see how it stands.");
    }

    private static Optional<Refusal> undecided(StagedList staged) {
        return Refusal.when(
                !staged.aside().isSettled(),
                Why.NOTHING_NEW,
                UNREAD.formatted(staged.aside().rowsAside()));
    }

    /** A list that leaves out no more than the one in use, whose rows were mended, was agreed on with that one. */
    private boolean needsTwo(ElectionId electionId, StagedList staged) {
        return !snapshots.isMended(electionId, staged.snapshotNo())
                && share.needsTwo(staged.aside().rowsAside(), staged.rows());
    }

    private NewListResult put(ElectionId electionId, StagedList staged, OfficeUser user, boolean confirmed) {
        if (staged.snapshotNo() == staged.inUseNo()) {
            return new NewListResult.NothingNew(staged.snapshotNo());
        }
        Optional<Refusal> undecided = undecided(staged);
        if (undecided.isPresent()) {
            return new NewListResult.Refused(undecided.get());
        }
        NewListResult brought = Objects.requireNonNull(tried.<NewListResult>execute(attempt -> {
            List<CaseDifference> changed = use(electionId, staged, user);
            boolean byTwo = needsTwo(electionId, staged) || changed.stream().anyMatch(CaseDifference::touchesDecided);
            if (!confirmed && byTwo) {
                attempt.setRollbackOnly();
                return new NewListResult.WaitsForSecond(staged.snapshotNo(), changed);
            }
            record(electionId, staged, user, changed);
            return new NewListResult.InUse(staged.snapshotNo(), changed);
        }));
        if (brought instanceof NewListResult.WaitsForSecond) {
            waiting.add(electionId, staged.snapshotNo(), user.userName());
            door.record(
                    user.actor(),
                    LedgerLine.of(
                            LedgerChain.of(electionId),
                            "list_waits_for_second",
                            "list " + staged.snapshotNo(),
                            withAside(staged, Map.of("kind", staged.kind().code(), "rows", staged.rows()))));
        }
        return brought;
    }

    private List<CaseDifference> use(ElectionId electionId, StagedList staged, OfficeUser user) {
        snapshots.use(electionId, staged.kind(), staged.snapshotNo());
        Map<EnvelopeKey, List<String>> because = touched.of(electionId, staged);
        return watch.lookAgain(because.keySet(), user.actor(), because);
    }

    private void record(ElectionId electionId, StagedList staged, OfficeUser user, List<CaseDifference> changed) {
        Map<String, Object> payload = new LinkedHashMap<>();
        payload.put(
                "changed",
                changed.stream()
                        .map(difference -> difference.key().envelopeNo())
                        .toList());
        payload.put("kind", staged.kind().code());
        payload.put("rows", staged.rows());
        payload.put("voters_touched", staged.touchedVoterIds().size());
        door.record(
                user.actor(),
                LedgerLine.of(
                        LedgerChain.of(electionId),
                        "list_in_use",
                        "list " + staged.snapshotNo(),
                        withAside(staged, payload)));
    }

    /** What observers read of rows set aside: how many, and hashes of the rows and of the reason. */
    private static Map<String, Object> withAside(StagedList staged, Map<String, Object> payload) {
        SetAsideList aside = staged.aside();
        if (aside.isEmpty()) {
            return payload;
        }
        Map<String, Object> more = new LinkedHashMap<>(payload);
        more.put("set_aside", aside.rowsAside());
        more.put("set_aside_hash", aside.rowsHash());
        more.put("because", Sha256.of(String.valueOf(aside.because())));
        return more;
    }
}
