package org.proviso.intake;

import java.util.List;

/** Numbers of envelopes in a sentence. */
public final class NumberWords {

    private NumberWords() {}

    /** {@code P-1001}, {@code P-1001 and P-1002}, {@code P-1001, P-1002 and P-1003}. */
    public static String listed(List<String> names) {
        int last = names.size() - 1;
        return last < 1
                ? String.join("", names)
                : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
    }
}
