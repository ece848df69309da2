package org.proviso.election;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** The words for when the office is open, as one column keeps them: a line for each language. */
final class OfficeHoursColumn {

    private OfficeHoursColumn() {}

    static String text(Map<String, String> hours) {
        return new TreeMap<>(hours)
                .entrySet().stream()
                        .map(entry -> entry.getKey() + "=" + entry.getValue())
                        .collect(Collectors.joining("\n"));
    }

    static Map<String, String> of(String text) {
        Map<String, String> hours = new TreeMap<>();
        text.lines().forEach(line -> {
            int equals = line.indexOf('=');
            hours.put(line.substring(0, equals), line.substring(equals + 1));
        });
        return Collections.unmodifiableMap(hours);
    }
}
