package org.proviso.ledger.statement;

import java.lang.reflect.Constructor;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.BeanUtils;
import org.springframework.core.MethodParameter;
import org.springframework.jdbc.core.RowMapper;

/**
 * Makes a record of a row: each component out of the column of its name, and a record in the record out of the same row,
 * as {@code paramSource} writes them. Spring's SimplePropertyRowMapper knows no records in records. It also asks for every
 * name of several words, and for every key, in vain first, which takes a row fifty times as long.
 */
final class RecordMapper<T> implements RowMapper<T> {

    private static final ClassValue<RecordMapper<?>> MAPPERS = new ClassValue<>() {
        @Override
        protected RecordMapper<?> computeValue(Class<?> type) {
            return new RecordMapper<>(type);
        }
    };

    /** What gives one component. */
    private interface Part {
        @Nullable
        Object mapRow(ResultSet row, int number) throws SQLException;
    }

    private final Constructor<T> constructor;
    private final List<Part> parts;

    private RecordMapper(Class<T> type) {
        constructor = BeanUtils.getResolvableConstructor(type);
        parts = IntStream.range(0, constructor.getParameterCount())
                .mapToObj(place -> part(new MethodParameter(constructor, place)))
                .toList();
    }

    /** The mapper of a record; it is made once. */
    @SuppressWarnings("unchecked") // each class has its own
    static <T> RecordMapper<T> of(Class<T> type) {
        return (RecordMapper<T>) MAPPERS.get(type);
    }

    private Part part(MethodParameter component) {
        Class<?> type = component.getParameterType();
        String name = constructor
                .getDeclaringClass()
                .getRecordComponents()[component.getParameterIndex()]
                .getName();
        return type.isRecord() && !ColumnConversions.isText(type)
                ? of(type)::mapRow
                : RecordColumn.of(name, component)::value;
    }

    @Override
    public T mapRow(ResultSet row, int number) throws SQLException {
        @Nullable Object[] values = new @Nullable Object[parts.size()];
        for (int place = 0; place < values.length; place++) {
            values[place] = parts.get(place).mapRow(row, number);
        }
        return BeanUtils.instantiateClass(constructor, values);
    }
}
