package org.proviso.access;

import java.nio.charset.StandardCharsets;
import java.security.SecureRandom;
import java.util.Optional;
import org.proviso.core.act.Refusal;
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

    /** Why a password cannot be changed: the old one must be known, and the new one another of a fair length. */
    Optional<Refusal> refusal(String old, String chosen, String hash) {
        if (!encoder.matches(old, hash)) {
            return wrong("old", "The old password is not right.");
        }
        if (chosen.length() < SHORTEST || chosen.getBytes(StandardCharsets.UTF_8).length > LONGEST_BYTES) {
            return wrong(
                    "chosen",
                    "A password has at least " + SHORTEST + " characters and at most " + LONGEST_BYTES + " bytes.");
        }
        return chosen.equals(old) ? wrong("chosen", "Choose a password other than the old one.") : Optional.empty();
    }

    private static Optional<Refusal> wrong(String field, String words) {
        return Optional.of(Refusal.at(field, Refusal.Why.PASSWORD_NOT_GOOD, words));
    }

    private String letters(int count) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < count; i++) {
            text.append(ALPHABET.charAt(random.nextInt(ALPHABET.length())));
        }
        return text.toString();
    }
}
