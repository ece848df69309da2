package org.proviso.review.queue;

import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.proviso.core.Code;
import org.proviso.core.ElectionId;

/**
 * A filter in one line, as it stands in the address of a list and in a saved view: {@code outlook=reject&sort=age}. What
 * cannot be read of it is left out, so that a view from an older program still opens.
 */
public final class QueueFilterText {

    private static final String SORT = "sort";
    private static final String LAST = "last";

    private QueueFilterText() {}

    /** The filter without its election; empty where it is open and in the usual order. */
    public static String write(QueueFilter filter) {
        List<String> parts = new ArrayList<>();
        filter.wanted()
                .forEach((column, value) ->
                        parts.add(column.code() + "=" + URLEncoder.encode(value, StandardCharsets.UTF_8)));
        if (filter.sort() != QueueSort.PRIORITY) {
            parts.add(SORT + "=" + filter.sort().code());
        }
        if (filter.descending()) {
            parts.add(LAST + "=yes");
        }
        return String.join("&", parts);
    }

    public static QueueFilter read(ElectionId electionId, String text) {
        Map<QueueColumn, String> wanted = new EnumMap<>(QueueColumn.class);
        QueueSort sort = QueueSort.PRIORITY;
        boolean descending = false;
        for (String part : text.split("&", -1)) {
            int equal = part.indexOf('=');
            String name = equal < 0 ? part : part.substring(0, equal);
            String value = equal < 0 ? "" : decoded(part.substring(equal + 1));
            Code.find(QueueColumn.class, name).ifPresent(column -> wanted.put(column, value));
            if (name.equals(SORT)) {
                sort = Code.find(QueueSort.class, value).orElse(sort);
            }
            descending |= name.equals(LAST) && value.equals("yes");
        }
        return new QueueFilter(electionId, wanted, sort, descending);
    }

    private static String decoded(String value) {
        try {
            return URLDecoder.decode(value, StandardCharsets.UTF_8);
        } catch (IllegalArgumentException e) {
            return "";
        }
    }
}
