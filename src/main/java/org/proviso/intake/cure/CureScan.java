package org.proviso.intake.cure;

/** A scan or photo of evidence that a voter brought: of which evidence, its number there, and what kind of picture it is. */
public record CureScan(int cureNo, int number, String mediaType) {

    /** {@code Scan 1 of evidence 2}. */
    public String words() {
        return "Scan " + number + " of evidence " + cureNo;
    }
}
