package org.proviso.intake;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.ReceiptNumber;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The receipt numbers in the table of envelopes: which envelopes have one, and its correction. */
@Repository
public class ReceiptStore {

    private final JdbcClient jdbc;

    ReceiptStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** What two spellings of a number share; empty where an envelope has none. */
    static String compared(@Nullable ReceiptNumber receiptNo) {
        return receiptNo == null ? "" : receiptNo.compared();
    }

    /** The envelopes of all elections with this receipt number, however it is spelled, in the order they came in. */
    public List<EnvelopeKey> withReceipt(ReceiptNumber receiptNo) {
        String compared = compared(receiptNo);
        return compared.isEmpty()
                ? List.of()
                : jdbc.sql("""
                                select election_id, envelope_no from envelope where receipt_compared = ?
                                order by recorded_at, election_id, place""").param(compared).query(EnvelopeKey.class).list();
    }

    /** Writes another receipt number, or none, over what stood there in that version. */
    public void change(
            ElectionId electionId, EnvelopeNumber envelopeNo, int version, @Nullable ReceiptNumber receiptNo) {
        int changed = jdbc.sql("""
                        update envelope set receipt_no = ?, receipt_compared = ?, version = version + 1
                        where election_id = ? and envelope_no = ? and version = ?""")
                .params(ReceiptNumber.text(receiptNo), compared(receiptNo), electionId, envelopeNo, version)
                .update();
        if (changed == 0) {
            throw new OptimisticLockingFailureException(
                    "The envelope " + envelopeNo + " was changed by somebody else since you opened it.");
        }
    }
}
