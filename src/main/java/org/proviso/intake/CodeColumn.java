package org.proviso.intake;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Set;
import org.proviso.core.YesNo;

/** How lists of codes, and yes and no, stand in a column. */
public final class CodeColumn {

    private CodeColumn() {}

    public static String joined(Collection<String> codes) {
        return String.join(";", codes);
    }

    static Set<String> split(String joined) {
        Set<String> codes = new LinkedHashSet<>();
        if (!joined.isEmpty()) {
            Collections.addAll(codes, joined.split(";"));
        }
        return Collections.unmodifiableSet(codes);
    }

    public static String word(YesNo answer) {
        return answer.name().toLowerCase(Locale.ROOT);
    }
}
