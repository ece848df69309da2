package org.proviso.release;

import java.util.Map;
import java.util.Set;
import org.proviso.access.OfficeUser;
import org.proviso.core.EnvelopeNumber;
import org.proviso.ledger.LedgerLine;
import org.springframework.stereotype.Component;

/** How envelopes leave a batch that is not open: the batch has fewer, and its sheets are counted anew. */
@Component
class EnvelopeRemoval {

    private final BatchStore batches;
    private final RemakeSheetStore sheets;
    private final EnvelopesToOpen waiting;

    EnvelopeRemoval(BatchStore batches, RemakeSheetStore sheets, EnvelopesToOpen waiting) {
        this.batches = batches;
        this.sheets = sheets;
        this.waiting = waiting;
    }

    /** The batch without these envelopes. */
    Batch without(Batch batch, Set<EnvelopeNumber> envelopeNos, OfficeUser by, String because) {
        batches.takeOut(batch, envelopeNos, by.userName(), because);
        Batch now = batches.known(batch.electionId(), batch.number());
        sheets.renew(now, RemakeSheetBuilder.of(now.electionId(), now.number(), waiting.in(now)));
        return now;
    }

    /** What the ledger says of an envelope that left this batch. */
    LedgerLine line(Batch now, EnvelopeNumber envelopeNo) {
        return ReleaseService.line(
                now.electionId(),
                "taken_out_of_batch",
                envelopeNo.value(),
                Map.of(
                        "batch", now.number(),
                        "envelopes", now.envelopes(),
                        "sheets", sheets.of(now.electionId(), now.number()).size()));
    }
}
