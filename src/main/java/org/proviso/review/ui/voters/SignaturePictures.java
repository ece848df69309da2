package org.proviso.review.ui.voters;

import org.proviso.core.EnvelopeKey;
import org.proviso.core.VoterId;

/** The addresses of pictures of signatures. */
public final class SignaturePictures {

    private SignaturePictures() {}

    /** The one on an envelope. */
    public static String envelope(EnvelopeKey key) {
        return of(key) + "/signature";
    }

    /** One on file of whoever the voter is, or is presumed to be, by its place from 0. */
    public static String onFile(EnvelopeKey key, int place) {
        return of(key) + "/on-file/" + place;
    }

    /** One on file of a voter whom the envelope may belong to, by its place from 0. */
    public static String onFile(EnvelopeKey key, VoterId voterId, int place) {
        return of(key) + "/of/" + voterId + "/" + place;
    }

    private static String of(EnvelopeKey key) {
        return "/images/" + key.electionId() + "/" + key.envelopeNo();
    }
}
