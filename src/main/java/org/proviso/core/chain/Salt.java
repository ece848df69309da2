package org.proviso.core.chain;

/**
 * The salt of one envelope: what must not be readable in the ledger stands there as a hash salted with it, so that
 * nobody can try out voter ids. The salt lives with the case and goes when the case is purged.
 */
public record Salt(String value) {

    /** The salted hash of a text that the ledger must not show. */
    public String hash(String text) {
        return Sha256.of(value + "\n" + text);
    }
}
