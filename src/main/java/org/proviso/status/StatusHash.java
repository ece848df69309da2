package org.proviso.status;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.time.LocalDate;
import java.util.HexFormat;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.ReceiptNumber;

/**
 * HMAC-SHA-256 (RFC 2104, FIPS 198-1) under the office's secret. The election is no part of what a line is found by, so
 * a voter need not name it. Thread-safe.
 */
final class StatusHash {

    private static final String ALGORITHM = "HmacSHA256";

    private final SecretKeySpec secret;

    StatusHash(byte[] secret) {
        this.secret = new SecretKeySpec(secret, ALGORITHM);
    }

    /** By which a line is found. */
    String line(ReceiptNumber receiptNo, LocalDate birthDate) {
        return of("line\n" + receiptNo.compared() + "\n" + birthDate);
    }

    /** The line of an envelope whose voter's birth date nobody knows: no date that is typed leads to it. */
    String undated(ReceiptNumber receiptNo) {
        return of("line\n" + receiptNo.compared() + "\n");
    }

    /** By which the lines of all envelopes with one receipt number are found. */
    String receipt(ReceiptNumber receiptNo) {
        return of("receipt\n" + receiptNo.compared());
    }

    /** By which the lines of one envelope are found, to be removed. */
    String envelope(EnvelopeKey key) {
        return of("envelope\n" + key.electionId() + "\n" + key.envelopeNo());
    }

    private String of(String text) {
        try {
            Mac mac = Mac.getInstance(ALGORITHM);
            mac.init(secret);
            return HexFormat.of().formatHex(mac.doFinal(text.getBytes(StandardCharsets.UTF_8)));
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("every Java platform has HMAC-SHA-256", e);
        }
    }
}
