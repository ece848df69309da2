package org.proviso.notices;

/**
 * Whom a letter goes to and where. An address that the law protects is never given: the office adds it by hand from the
 * protected record.
 */
public record MailTo(String name, String address, boolean heldByOffice) {

    /** What stands in place of a protected address. */
    static final String HELD = "Address held by the office";

    /** Whether a letter can go out at all. */
    public boolean hasAddress() {
        return heldByOffice || !address.isBlank();
    }
}
