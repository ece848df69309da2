package org.proviso.review.replay;

import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;
import org.proviso.core.chain.Salt;

/**
 * Whether a text of the tables is the one that the ledger means: hidden words by the salt of their envelope, which is
 * gone after a purge (then nobody can tell, and it passes), people by pseudonym. Not thread-safe.
 */
final class SaltedTextCheck {

    private final Function<EnvelopeNumber, Optional<Salt>> salts;
    private final Function<UserName, String> pseudonyms;
    private final Map<UserName, String> known = new HashMap<>();

    SaltedTextCheck(Function<EnvelopeNumber, Optional<Salt>> salts, Function<UserName, String> pseudonyms) {
        this.salts = salts;
        this.pseudonyms = pseudonyms;
    }

    boolean fits(EnvelopeNumber envelopeNo, CaseColumn column, String said, String there) {
        return switch (column.kind()) {
            case HIDDEN -> hides(envelopeNo, said, there);
            case REFERENCE -> said.equals(there) || (isHash(said) && hides(envelopeNo, said, there));
            case PERSON -> said.equals(there.isEmpty() ? "" : pseudonym(new UserName(there)));
            case WORDS -> set(said).equals(set(there));
            case STAMP -> stamp(said).equals(there);
            default -> said.equals(there);
        };
    }

    /** Whether a hash of the ledger is of this text. */
    boolean hides(EnvelopeNumber envelopeNo, String hash, @Nullable String text) {
        String words = text == null ? "" : text;
        if (hash.isEmpty()) {
            return words.isEmpty();
        }
        return salts.apply(envelopeNo)
                .map(salt -> salt.hash(words).equals(hash))
                .orElse(true);
    }

    String pseudonym(@Nullable UserName userName) {
        return userName == null ? "" : known.computeIfAbsent(userName, pseudonyms);
    }

    private static boolean isHash(String said) {
        return said.matches("[0-9a-f]{64}");
    }

    private static Set<String> set(String codes) {
        return new HashSet<>(Arrays.asList(codes.split(";")));
    }

    private static String stamp(String said) {
        return said.isEmpty()
                ? ""
                : LocalDateTime.parse(said).truncatedTo(ChronoUnit.SECONDS).toString();
    }
}
