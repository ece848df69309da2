package org.proviso.review.ends;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.proviso.core.BetweenRooms;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.review.CaseActSteps;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** Envelopes that were sent on, for the room that closes the election and for whoever reopens their cases. */
@Component
@BetweenRooms
public class SentOnEnvelopes {

    private final CountyReceiptStore receipts;
    private final CaseActSteps steps;

    SentOnEnvelopes(CountyReceiptStore receipts, CaseActSteps steps) {
        this.receipts = receipts;
        this.steps = steps;
    }

    /** Those for which the other county has not said that it received them, by envelope number. */
    @Transactional(readOnly = true)
    public List<EnvelopeNumber> withoutReceipt(ElectionId electionId) {
        return receipts.sentOn(electionId).stream()
                .filter(envelope -> !envelope.hasReceipt())
                .map(envelope -> envelope.key().envelopeNo())
                .toList();
    }

    /** What the ledger has of a reopening: the hidden reason, and the receipt that it sets aside, if there is one. */
    @Transactional(readOnly = true)
    public Map<String, Object> entry(EnvelopeKey key, String because) {
        Map<String, Object> entry = new LinkedHashMap<>();
        entry.put("because", steps.hidden(key, because));
        receipts.standing(key).ifPresent(receipt -> entry.put("county_receipt", receipt.number()));
        return entry;
    }

    /** The envelope is not sent on any more: the receipt for it holds no longer. */
    @Transactional(propagation = Propagation.MANDATORY)
    public void back(EnvelopeKey key) {
        receipts.setAside(key);
    }
}
