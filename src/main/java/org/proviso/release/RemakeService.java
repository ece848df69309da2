package org.proviso.release;

import java.util.List;
import java.util.Map;
import org.proviso.access.AccessService;
import org.proviso.access.ActDoor;
import org.proviso.access.Permission;
import org.proviso.core.ElectionId;
import org.proviso.core.act.ActResult;
import org.proviso.core.adjudication.finding.BallotCatalog;
import org.proviso.election.ElectionService;
import org.proviso.ledger.LedgerLine;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Copying the contests that count of ballots of another style, by two, and handing ballots to tabulation. */
@Service
public class RemakeService {

    private final BatchStore batches;
    private final RemakeSheetStore sheets;
    private final ElectionService elections;
    private final AccessService access;
    private final ActDoor door;

    RemakeService(
            BatchStore batches,
            RemakeSheetStore sheets,
            ElectionService elections,
            AccessService access,
            ActDoor door) {
        this.batches = batches;
        this.sheets = sheets;
        this.elections = elections;
        this.access = access;
        this.door = door;
    }

    /** What is to be copied in a batch. */
    @Transactional(readOnly = true)
    public List<RemakeSheet> sheets(ElectionId electionId, int batchNo) {
        access.demand(Permission.SEE_RELEASE);
        return sheets.of(electionId, batchNo);
    }

    /** The ballot styles of an election, for the titles of the contests to copy. */
    @Transactional(readOnly = true)
    public BallotCatalog ballots(ElectionId electionId) {
        access.demand(Permission.SEE_RELEASE);
        return elections.ballots(electionId);
    }

    /** The first of two begins to copy. */
    @Transactional
    public ActResult<RemakeSheet> beginRemake(ElectionId electionId, int batchNo, int number, int version) {
        ActDoor.Permitted first = door.demand(Permission.REMAKE_BALLOTS);
        return first.lock(() -> sheets.known(electionId, batchNo, number).at(version))
                .refuse(sheet -> ReleaseChecks.open(batches.known(electionId, batchNo)))
                .refuse(ReleaseChecks::toBeCopied)
                .save(sheet -> {
                    sheets.begin(sheet, first.user().userName());
                    return sheets.known(electionId, batchNo, number);
                })
                .record(sheet -> line(sheet, "remake_begun"));
    }

    /** The second of two has read every mark back. */
    @Transactional
    public ActResult<RemakeSheet> recordRemake(ElectionId electionId, int batchNo, int number, int version) {
        ActDoor.Permitted second = door.demand(Permission.REMAKE_BALLOTS);
        return second.lock(() -> sheets.known(electionId, batchNo, number).at(version))
                .refuse(ReleaseChecks::beingCopied)
                .notBy(sheet -> ReleaseService.userNames(sheet.firstCopier()))
                .save(sheet -> {
                    sheets.remade(sheet, second.user().userName());
                    return sheets.known(electionId, batchNo, number);
                })
                .record(sheet -> line(sheet, "remade"));
    }

    /** The ballots of a batch go to tabulation, once every sheet is remade. */
    @Transactional
    public ActResult<Batch> handOff(ElectionId electionId, int batchNo, int version, int ballots) {
        return door.demand(Permission.HAND_OFF)
                .lock(() -> batches.known(electionId, batchNo).at(version))
                .refuse(ReleaseChecks::open)
                .refuse(batch -> ReleaseChecks.handOff(batch, sheets.of(electionId, batchNo), ballots))
                .save(batch -> {
                    batches.handedOff(batch);
                    return batches.known(electionId, batchNo);
                })
                .record(batch -> ReleaseService.line(
                        electionId, "handed_off", ReleaseService.subject(batchNo), Map.of("ballots", ballots)));
    }

    private static LedgerLine line(RemakeSheet sheet, String act) {
        return ReleaseService.line(
                sheet.electionId(),
                act,
                ReleaseService.subject(sheet.batchNo()) + " sheet " + sheet.number(),
                Map.of("ballots", sheet.ballots()));
    }
}
