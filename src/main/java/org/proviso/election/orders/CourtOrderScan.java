package org.proviso.election.orders;

/** A scan of a court's order: of which order, its number there, and what kind of file it is. */
public record CourtOrderScan(int orderNo, int number, String mediaType) {

    /** {@code Scan 1 of order 2 (PDF)}. */
    public String words() {
        return "Scan " + number + " of order " + orderNo
                + (mediaType.equals("application/pdf") ? " (PDF)" : " (picture)");
    }
}
