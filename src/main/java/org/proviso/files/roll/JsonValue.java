package org.proviso.files.roll;

import com.fasterxml.jackson.core.io.JsonStringEncoder;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.proviso.core.YesNo;
import org.proviso.files.InputException;

/**
 * One value of a JSON record with its line and its key ({@code VoterRecord[2].Voter.Name}, lists counted from 1). The
 * content is a map, a list, a string, a boolean or a number; every wrong kind is an {@link InputException}.
 */
record JsonValue(String file, int line, String key, Object content) {

    /** The content of a null, which only a record that is set aside may have. */
    enum Nothing {
        NULL;

        @Override
        public String toString() {
            return "null";
        }
    }

    /** The value as JSON text, on one line. */
    String asItCame() {
        if (content instanceof Map<?, ?>) {
            return map().entrySet().stream()
                    .map(member ->
                            textual(member.getKey()) + ":" + member.getValue().asItCame())
                    .collect(Collectors.joining(",", "{", "}"));
        }
        if (content instanceof List<?>) {
            return items().stream().map(JsonValue::asItCame).collect(Collectors.joining(",", "[", "]"));
        }
        return content instanceof String text ? textual(text) : content.toString();
    }

    private static String textual(String text) {
        return '"' + new String(JsonStringEncoder.getInstance().quoteAsString(text)) + '"';
    }

    /** The members of an object of that declared type, which may have no member but these. */
    JsonValue object(String type, String... members) {
        String declared = required("@type").text();
        if (!declared.equals(type)) {
            throw required("@type").wrong(InputException.quoted(declared) + " is not " + type);
        }
        for (Map.Entry<String, JsonValue> member : map().entrySet()) {
            if (!member.getKey().equals("@type") && !List.of(members).contains(member.getKey())) {
                throw member.getValue().wrong("is not a known key of " + type);
            }
        }
        return this;
    }

    JsonValue required(String name) {
        return optional(name).orElseThrow(() -> InputException.atKey(file, line, key + "." + name, "is missing"));
    }

    Optional<JsonValue> optional(String name) {
        return Optional.ofNullable(map().get(name));
    }

    /** The text of a member, empty where it is not there. */
    String text(String name) {
        return optional(name).map(JsonValue::text).orElse("");
    }

    /** The values of a list member; none where it is not there. */
    List<JsonValue> list(String name) {
        return optional(name).map(JsonValue::items).orElse(List.of());
    }

    YesNo yesNo(String name) {
        return optional(name).map(JsonValue::yesNo).orElse(YesNo.UNKNOWN);
    }

    String text() {
        if (content instanceof String text) {
            return text.strip();
        }
        throw wrong("is not text");
    }

    LocalDate date() {
        try {
            if (text().length() == 10) {
                return LocalDate.parse(text());
            }
        } catch (DateTimeException e) {
            // Refused below with every other mistake.
        }
        throw wrong(InputException.quoted(text()) + " is not a date (write it as 1990-12-31)");
    }

    InputException wrong(String reason) {
        return InputException.atKey(file, line, key, reason);
    }

    private YesNo yesNo() {
        if (content instanceof Boolean yes) {
            return yes ? YesNo.YES : YesNo.NO;
        }
        throw wrong("is not true or false");
    }

    @SuppressWarnings("unchecked")
    private List<JsonValue> items() {
        if (content instanceof List<?> list) {
            return (List<JsonValue>) list;
        }
        throw wrong("is not a list");
    }

    @SuppressWarnings("unchecked")
    private Map<String, JsonValue> map() {
        if (content instanceof Map<?, ?> map) {
            return (Map<String, JsonValue>) map;
        }
        throw wrong("is not an object");
    }
}
