package org.proviso.intake.cure;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proviso.access.AccessService;
import org.proviso.access.ActDoor;
import org.proviso.access.Permission;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.core.chain.Sha256;
import org.proviso.election.ElectionService;
import org.proviso.files.election.ImageFile;
import org.proviso.intake.CureStore;
import org.proviso.intake.IntakeService;
import org.proviso.intake.StoredImage;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerLine;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Scans and photos of what voters brought, for those who record it and those who see the case. */
@Service
public class CureScanService {

    private final CureScanStore scans;
    private final CureStore cures;
    private final IntakeService intake;
    private final ElectionService elections;
    private final AccessService access;
    private final ActDoor door;

    CureScanService(
            CureScanStore scans,
            CureStore cures,
            IntakeService intake,
            ElectionService elections,
            AccessService access,
            ActDoor door) {
        this.scans = scans;
        this.cures = cures;
        this.intake = intake;
        this.elections = elections;
        this.access = access;
        this.door = door;
    }

    /** The scans of an envelope's evidence, without their bytes. */
    @Transactional(readOnly = true)
    public List<CureScan> scans(ElectionId electionId, EnvelopeNumber envelopeNo) {
        demandReader();
        return scans.scans(electionId, envelopeNo);
    }

    /** One of them; empty where there is none. */
    @Transactional(readOnly = true)
    public Optional<StoredImage> scan(ElectionId electionId, EnvelopeNumber envelopeNo, int cureNo, int number) {
        demandReader();
        return scans.find(electionId, envelopeNo, cureNo, number);
    }

    /**
     * Keeps a scan or photo of evidence that was recorded. What is no PNG or JPEG, or is too large, is an
     * {@link org.proviso.files.InputException}; where there is no such evidence, {@link IllegalArgumentException}.
     */
    @Transactional
    public ActResult<CureScan> keep(
            ElectionId electionId, EnvelopeNumber envelopeNo, int cureNo, String fileName, byte[] content) {
        ActDoor.Permitted keyer = door.demand(Permission.RECORD_CURE_EVIDENCE);
        String sha256 = Sha256.of(content);
        return keyer.lock(() -> recorded(electionId, envelopeNo, cureNo))
                .refuse(row -> elections.closed(electionId))
                .refuse(row -> Refusal.when(
                        row.isTakenBack(),
                        Refusal.Why.NOT_IN_THIS_STATE,
                        "This evidence was taken back: no scan is added to it."))
                .refuse(row -> Refusal.when(
                        scans.has(electionId, envelopeNo, cureNo, sha256),
                        Refusal.Why.NOTHING_NEW,
                        "This very picture is kept with this evidence already."))
                .save(row -> scans.insert(
                        electionId,
                        envelopeNo,
                        cureNo,
                        new StoredImage(ImageFile.checkedType(fileName, content), sha256, content),
                        keyer.user().userName()))
                .record(scan -> LedgerLine.of(
                        LedgerChain.of(electionId),
                        "cure_scan_kept",
                        envelopeNo.value(),
                        Map.of("evidence", cureNo, "scan", scan.number(), "sha256", sha256)));
    }

    private CureStore.CureRow recorded(ElectionId electionId, EnvelopeNumber envelopeNo, int cureNo) {
        intake.demandLocked(electionId, envelopeNo);
        return cures.rows(electionId, envelopeNo).stream()
                .filter(row -> row.number() == cureNo)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(
                        "The envelope " + envelopeNo + " has no evidence " + cureNo + "."));
    }

    private void demandReader() {
        if (!access.isPermitted(Permission.RECORD_CURE_EVIDENCE)) {
            access.demand(Permission.SEE_WHOLE_CASE);
        }
    }
}
