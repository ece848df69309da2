package org.proviso.review;

import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;
import org.proviso.core.Code;
import org.proviso.core.rules.Reason;

/** Lists of codes as a column has them, joined by semicolons. */
public final class CodeListColumn {

    private CodeListColumn() {}

    public static String of(Collection<? extends Code> codes) {
        return codes.stream().map(Code::code).collect(Collectors.joining(";"));
    }

    public static List<Reason> reasons(String text) {
        return parts(text).stream()
                .map(code -> Code.find(Reason.class, code).orElseThrow())
                .toList();
    }

    private static List<String> parts(String text) {
        return text.isEmpty() ? List.of() : Arrays.asList(text.split(";"));
    }
}
