package org.proviso.intake;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proviso.access.AccessService;
import org.proviso.access.ActDoor;
import org.proviso.access.Permission;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.VoterId;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.core.chain.Sha256;
import org.proviso.election.ElectionService;
import org.proviso.files.election.ImageFile;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerLine;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Pictures of signatures, for those who compare them: reviewers, and the deciding body with the whole case before it. */
@Service
public class ImageService {

    private final ImageStore images;
    private final IntakeService intake;
    private final AccessService access;
    private final ActDoor door;

    private final ElectionService elections;

    ImageService(
            ImageStore images, IntakeService intake, ElectionService elections, AccessService access, ActDoor door) {
        this.elections = elections;
        this.images = images;
        this.intake = intake;
        this.access = access;
        this.door = door;
    }

    /** The signature on an envelope's affirmation, where there is a picture of it. */
    @Transactional(readOnly = true)
    public Optional<StoredImage> signature(ElectionId electionId, EnvelopeNumber envelopeNo) {
        demand();
        return images.signature(electionId, envelopeNo);
    }

    /** The same picture for whoever keys the envelope, who has its paper in hand. */
    @Transactional(readOnly = true)
    public Optional<StoredImage> whileKeying(ElectionId electionId, EnvelopeNumber envelopeNo) {
        access.demand(Permission.KEY_ENVELOPES);
        return images.signature(electionId, envelopeNo);
    }

    /**
     * Keeps the scan of a signature for an envelope that came without one. A second one is refused: what was looked at
     * stays what it was. What is no picture is an {@link org.proviso.files.InputException}.
     */
    @Transactional
    public ActResult<StoredImage> keepScan(
            ElectionId electionId, EnvelopeNumber envelopeNo, String fileName, byte[] content) {
        return door.demand(Permission.KEY_ENVELOPES)
                .lock(() -> {
                    intake.demandLocked(electionId, envelopeNo);
                    return new StoredImage(ImageFile.checkedType(fileName, content), Sha256.of(content), content);
                })
                .refuse(scan -> elections.closed(electionId))
                .refuse(scan -> Refusal.when(
                        images.signature(electionId, envelopeNo).isPresent(),
                        Refusal.Why.SCAN_KEPT,
                        "There is a scan of " + envelopeNo + " already. It stays as it is."))
                .save(scan -> {
                    images.insertSignature(electionId, envelopeNo, scan);
                    return scan;
                })
                .record(scan -> LedgerLine.of(
                        LedgerChain.of(electionId), "scan_kept", envelopeNo.value(), Map.of("sha256", scan.sha256())));
    }

    /** The signatures on file with a voter's registration, in the order of their numbers. */
    @Transactional(readOnly = true)
    public List<StoredImage> exemplars(ElectionId electionId, VoterId voterId) {
        demand();
        return images.exemplars(electionId, voterId);
    }

    private void demand() {
        if (!access.isPermitted(Permission.PROPOSE) && !access.isPermitted(Permission.SECOND_REVIEW)) {
            access.demand(Permission.SEE_WHOLE_CASE);
        }
    }
}
