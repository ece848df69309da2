package org.proviso.release;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.proviso.access.AccessService;
import org.proviso.access.OfficeUser;
import org.proviso.access.Permission;
import org.proviso.core.ElectionId;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Copying the contests that count of ballots of another style, by two, and handing ballots to tabulation. */
@Service
public class RemakeService {

    private final BatchStore batches;
    private final RemakeSheetStore sheets;
    private final AccessService access;
    private final LedgerService ledger;

    RemakeService(BatchStore batches, RemakeSheetStore sheets, AccessService access, LedgerService ledger) {
        this.batches = batches;
        this.sheets = sheets;
        this.access = access;
        this.ledger = ledger;
    }

    /** What is to be copied in a batch. */
    @Transactional(readOnly = true)
    public List<RemakeSheet> sheets(ElectionId electionId, int batchNo) {
        return sheets.of(electionId, batchNo);
    }

    /** What is to be copied in every batch of an election, by batch number. */
    @Transactional(readOnly = true)
    public Map<Integer, List<RemakeSheet>> sheets(ElectionId electionId) {
        return sheets.all(electionId).stream().collect(Collectors.groupingBy(RemakeSheet::batchNo));
    }

    /** The first of two begins to copy. */
    @Transactional
    public void beginRemake(ElectionId electionId, int batchNo, int number, int version) {
        OfficeUser user = access.demand(Permission.REMAKE_BALLOTS);
        RemakeSheet sheet = demand(electionId, batchNo, number, version);
        Batch batch = batches.find(electionId, batchNo).orElseThrow();
        if (batch.openedAt() == null || sheet.firstCopier() != null) {
            throw new IllegalStateException("This batch is not open yet, or somebody has begun to copy.");
        }
        sheets.begin(sheet, user.userName());
        record(sheet, user, "remake_begun");
    }

    /** The second of two has read every mark back. */
    @Transactional
    public void recordRemake(ElectionId electionId, int batchNo, int number, int version) {
        RemakeSheet sheet = demand(electionId, batchNo, number, version);
        if (sheet.firstCopier() == null || sheet.remadeAt() != null) {
            throw new IllegalStateException("Nobody has begun to copy, or it is done.");
        }
        OfficeUser user = access.demandSomebodyElse(Permission.REMAKE_BALLOTS, List.of(sheet.firstCopier()));
        sheets.remade(sheet, user.userName());
        record(sheet, user, "remade");
    }

    /** The ballots of a batch go to tabulation, once every sheet is remade. */
    @Transactional
    public ReleaseActResult handOff(ElectionId electionId, int batchNo, int version, int ballots) {
        OfficeUser user = access.demand(Permission.HAND_OFF);
        Batch batch = batches.find(electionId, batchNo)
                .filter(found -> found.version() == version)
                .orElseThrow(() -> new OptimisticLockingFailureException("The batch was changed meanwhile."));
        boolean copied = sheets.of(electionId, batchNo).stream()
                .map(RemakeSheet::remadeAt)
                .allMatch(Objects::nonNull);
        if (batch.openedAt() == null || batch.handedOffAt() != null || !copied) {
            return new ReleaseActResult.Refused(Refusal.of(
                    Why.NOT_IN_THIS_STATE, "A batch is handed off once, when it is open and everything is remade."));
        }
        if (ballots != batch.ballots()) {
            return new ReleaseActResult.Refused(Refusal.of(
                    Why.NOT_IN_THIS_STATE,
                    ballots + " ballots are counted, and the batch had " + batch.ballots() + ": count again."));
        }
        batches.handedOff(batch);
        ledger.record(
                LedgerChain.of(electionId), user.actor(), "handed_off", "batch " + batchNo, Map.of("ballots", ballots));
        return new ReleaseActResult.Done(batches.find(electionId, batchNo).orElseThrow());
    }

    private RemakeSheet demand(ElectionId electionId, int batchNo, int number, int version) {
        return sheets.find(electionId, batchNo, number)
                .filter(found -> found.version() == version)
                .orElseThrow(() -> new OptimisticLockingFailureException("The sheet was changed meanwhile."));
    }

    private void record(RemakeSheet sheet, OfficeUser user, String act) {
        ledger.record(
                LedgerChain.of(sheet.electionId()),
                user.actor(),
                act,
                "batch " + sheet.batchNo() + " sheet " + sheet.number(),
                Map.of("ballots", sheet.ballots()));
    }
}
