package org.proviso.status;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.time.LocalDate;
import java.util.HexFormat;
import java.util.Locale;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/**
 * HMAC-SHA-256 (RFC 2104, FIPS 198-1) under the office's secret. Receipt numbers are unique in an office, so the
 * election is no part of what is hashed and a voter need not name it. Thread-safe.
 */
final class StatusHash {

    private static final String ALGORITHM = "HmacSHA256";

    private final SecretKeySpec secret;

    StatusHash(byte[] secret) {
        this.secret = new SecretKeySpec(secret, ALGORITHM);
    }

    /** By which a line is found. */
    String line(String receiptNo, LocalDate birthDate) {
        return of("line\n" + normal(receiptNo) + "\n" + birthDate);
    }

    /** By which the lines of one receipt are found, to be removed. */
    String receipt(String receiptNo) {
        return of("receipt\n" + normal(receiptNo));
    }

    /** As a receipt number is compared: letters and digits only, in upper case. */
    private static String normal(String receiptNo) {
        return receiptNo.toUpperCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]", "");
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
