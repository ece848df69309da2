package org.proviso.core;

import java.util.Locale;
import java.util.Optional;

/** A word with a fixed spelling in files and reports; enums carry it as their name in lower case. */
public interface Code {

    String name();

    /** The spelling in files: the name in lower case, words joined by an underscore. */
    default String code() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The constant spelled so, or empty when the word is none of the allowed ones. */
    static <E extends Enum<E> & Code> Optional<E> find(Class<E> type, String spelled) {
        for (E constant : type.getEnumConstants()) {
            if (constant.code().equals(spelled)) {
                return Optional.of(constant);
            }
        }
        return Optional.empty();
    }
}
