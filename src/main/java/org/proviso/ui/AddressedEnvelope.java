package org.proviso.ui;

import org.proviso.core.EnvelopeNumber;

/** The envelope that an address names. */
public final class AddressedEnvelope {

    private AddressedEnvelope() {}

    /**
     * Its number.
     *
     * @throws NothingHereException where no envelope can have it: it is blank or too long
     */
    public static EnvelopeNumber number(String inAddress) {
        return EnvelopeNumber.find(inAddress).orElseThrow(() -> missing(inAddress));
    }

    /** What the page says where no envelope of the election has this number. */
    public static NothingHereException missing(String inAddress) {
        return new NothingHereException(
                inAddress.isBlank()
                        ? "This address has no envelope number."
                        : "There is no envelope " + inAddress + " in this election.");
    }
}
