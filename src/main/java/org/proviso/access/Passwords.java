package org.proviso.access;

import java.nio.charset.StandardCharsets;
import java.security.SecureRandom;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.stereotype.Component;

/** Makes and checks passwords. What is kept is a BCrypt hash, which reads no further than 72 bytes. */
@Component
class Passwords {

    private static final int SHORTEST = 12;
    private static final int LONGEST_BYTES = 72;
    private static final int ONE_TIME_LENGTH = 16;
    private static final int CODE_LENGTH = 6;

    /** Letters and digits that nobody confuses when reading aloud. */
    private static final String ALPHABET = "23456789ABCDEFGHJKMNPQRSTUVWXYZ";

    private final SecureRandom random = new SecureRandom();
    private final PasswordEncoder encoder;

    Passwords(PasswordEncoder encoder) {
        this.encoder = encoder;
    }

    String oneTime() {
        return letters(ONE_TIME_LENGTH).replaceAll("(.{4})(?=.)", "$1-");
    }

    String pseudonymCode() {
        return letters(CODE_LENGTH);
    }

    String hash(String password) {
        return encoder.encode(password);
    }

    /** Refuses a change unless the old password is known and the new one is another of a fair length. */
    void checkChange(String old, String chosen, String hash) {
        if (!encoder.matches(old, hash)) {
            throw new UserRuleException("The old password is not right.");
        }
        if (chosen.length() < SHORTEST || chosen.getBytes(StandardCharsets.UTF_8).length > LONGEST_BYTES) {
            throw new UserRuleException(
                    "A password has at least " + SHORTEST + " characters and at most " + LONGEST_BYTES + " bytes.");
        }
        if (chosen.equals(old)) {
            throw new UserRuleException("Choose a password other than the old one.");
        }
    }

    private String letters(int count) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < count; i++) {
            text.append(ALPHABET.charAt(random.nextInt(ALPHABET.length())));
        }
        return text.toString();
    }
}
