package org.proviso.review.file;

import org.proviso.core.EnvelopeKey;
import org.proviso.core.adjudication.CaseReport;
import org.proviso.election.orders.CourtOrderScanService;
import org.proviso.intake.ImageService;
import org.proviso.intake.cure.CureScanService;
import org.springframework.stereotype.Component;

/** Which pictures there are of a case: signatures, what the voter brought, court orders. */
@Component
class CasePictures {

    private final ImageService images;
    private final CureScanService scans;
    private final CourtOrderScanService orders;

    CasePictures(ImageService images, CureScanService scans, CourtOrderScanService orders) {
        this.orders = orders;
        this.images = images;
        this.scans = scans;
    }

    /** Whether there is a picture of the signature on the envelope. */
    boolean hasSignature(EnvelopeKey key) {
        return images.signature(key.electionId(), key.envelopeNo()).isPresent();
    }

    CaseFile.Pictures of(EnvelopeKey key, CaseReport report) {
        return new CaseFile.Pictures(
                hasSignature(key),
                report.voter()
                        .map(voter -> images.exemplars(key.electionId(), voter.voterId())
                                .size())
                        .orElse(0),
                scans.scans(key.electionId(), key.envelopeNo()),
                orders.scans(key.electionId()));
    }
}
