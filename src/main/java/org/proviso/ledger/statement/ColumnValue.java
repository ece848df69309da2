package org.proviso.ledger.statement;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Collection;
import org.jspecify.annotations.Nullable;
import org.proviso.core.Code;
import org.proviso.core.Key;

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
}
