package org.proviso.election;

import java.util.List;
import org.proviso.core.CourtOrder;
import org.proviso.core.UserName;

/**
 * A court's order on file, by its number in the election; the version goes with a later change of its standing. Whoever
 * recorded it does not apply it to a case; an order from the election's files has nobody. The number of the court's case and
 * the judge are empty where nobody entered them.
 */
public record RecordedCourtOrder(
        int orderNo, int version, CourtOrder order, List<UserName> recordedBy, String caseNo, String judge) {

    /** Where the order was made: {@code No. 26-1187-CV, Judge Roe}, or empty. */
    public String source() {
        String number = caseNo.isEmpty() ? "" : "No. " + caseNo;
        return number + (number.isEmpty() || judge.isEmpty() ? "" : ", ") + judge;
    }
}
