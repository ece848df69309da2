package org.proviso.core.adjudication.kept;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.proviso.core.Code;

/** The fields of an object that was kept; one that is missing or has the wrong type is an {@link IllegalArgumentException}. */
record KeptFields(Map<?, ?> all) {

    static KeptFields of(@Nullable Object object) {
        if (object instanceof Map<?, ?> map) {
            return new KeptFields(map);
        }
        throw new IllegalArgumentException("an object is missing");
    }

    static String asText(@Nullable Object item) {
        if (item instanceof String text) {
            return text;
        }
        throw new IllegalArgumentException("a text value is missing");
    }

    List<String> names() {
        return all.keySet().stream().map(KeptFields::asText).toList();
    }

    boolean has(String name) {
        return all.containsKey(name);
    }

    String text(String name) {
        return as(String.class, name);
    }

    long number(String name) {
        return as(Long.class, name);
    }

    boolean flag(String name) {
        return as(Boolean.class, name);
    }

    KeptFields object(String name) {
        return of(as(Map.class, name));
    }

    /** The field read by something that reads a text, or null where the field is not there. */
    <T> @Nullable T optional(String name, Function<String, T> reads) {
        return has(name) ? reads.apply(text(name)) : null;
    }

    <E extends Enum<E> & Code> E code(String name, Class<E> type) {
        return code(type, text(name));
    }

    static <E extends Enum<E> & Code> E code(Class<E> type, String word) {
        return Code.find(type, word)
                .orElseThrow(() -> new IllegalArgumentException(
                        "\"" + word + "\" is not a " + type.getSimpleName() + " this version knows"));
    }

    List<?> list(String name) {
        return as(List.class, name);
    }

    List<String> texts(String name) {
        List<String> texts = new ArrayList<>();
        list(name).forEach(item -> texts.add(asText(item)));
        return texts;
    }

    /** The texts of a list in their order. */
    Set<String> set(String name) {
        return new LinkedHashSet<>(texts(name));
    }

    /** The objects of a list in their order. */
    List<KeptFields> objects(String name) {
        List<KeptFields> objects = new ArrayList<>();
        list(name).forEach(item -> objects.add(of(item)));
        return objects;
    }

    private <T> T as(Class<T> type, String name) {
        Object value = all.get(name);
        if (type.isInstance(value)) {
            return type.cast(value);
        }
        throw new IllegalArgumentException("\"" + name + "\" is missing or has the wrong type");
    }
}
