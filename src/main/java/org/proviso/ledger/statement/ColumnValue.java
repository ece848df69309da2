package org.proviso.ledger.statement;

import java.lang.reflect.Constructor;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Collection;
import org.jspecify.annotations.Nullable;
import org.proviso.core.Code;
import org.proviso.core.Key;
import org.springframework.beans.BeanUtils;

/**
 * What a column holds of a value: of a key its text, of a code its spelling, of a moment its time in UTC, of anything else
 * the value itself.
 */
final class ColumnValue {

    private ColumnValue() {}

    static @Nullable Object of(@Nullable Object value) {
        if (value instanceof Key key) {
            return key.value();
        }
        if (value instanceof Code code) {
            return code.code();
        }
        if (value instanceof Instant moment) {
            return moment.atOffset(ZoneOffset.UTC);
        }
        return value instanceof Collection<?> several
                ? several.stream().map(ColumnValue::of).toList()
                : value;
    }

    static boolean isKey(Class<?> type) {
        return Key.class.isAssignableFrom(type);
    }

    /** The key of this kind with this text; null where the column is empty. */
    static <K> @Nullable K key(Class<K> type, @Nullable String text) {
        return text == null ? null : BeanUtils.instantiateClass(constructor(type), text);
    }

    private static <K> Constructor<K> constructor(Class<K> type) {
        try {
            return type.getDeclaredConstructor(String.class);
        } catch (NoSuchMethodException e) {
            throw new IllegalArgumentException(type + " is not a key of one text", e);
        }
    }
}
