package org.proviso.status;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.time.LocalDate;
import java.util.HexFormat;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;
import org.jspecify.annotations.Nullable;
import org.proviso.core.ReceiptNumber;

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
    String line(@Nullable ReceiptNumber receiptNo, LocalDate birthDate) {
        return of("line\n" + normal(receiptNo) + "\n" + birthDate);
    }

    /** By which the lines of one receipt are found, to be removed. */
    String receipt(@Nullable ReceiptNumber receiptNo) {
        return of("receipt\n" + normal(receiptNo));
    }

    /** An envelope without a receipt number has lines too; nobody can look them up, for nobody can type its number. */
    private static String normal(@Nullable ReceiptNumber receiptNo) {
        return receiptNo == null ? "" : receiptNo.compared();
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
