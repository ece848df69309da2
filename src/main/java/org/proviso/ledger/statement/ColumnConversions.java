package org.proviso.ledger.statement;

import java.lang.reflect.Constructor;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.proviso.core.Code;
import org.proviso.core.Key;
import org.springframework.beans.BeanUtils;
import org.springframework.core.convert.TypeDescriptor;
import org.springframework.core.convert.converter.GenericConverter;
import org.springframework.core.convert.support.GenericConversionService;

/** What the value of a column stands for, the other way of {@link ColumnValue}; a list is its words between semicolons. */
final class ColumnConversions {

    private static final ClassValue<Constructor<?>> KEYS = new ClassValue<>() {
        @Override
        protected Constructor<?> computeValue(Class<?> type) {
            return BeanUtils.getResolvableConstructor(type);
        }
    };

    private static final GenericConversionService CONVERSIONS = new GenericConversionService();

    static {
        CONVERSIONS.addConverter(OffsetDateTime.class, Instant.class, OffsetDateTime::toInstant);
        CONVERSIONS.addConverter(new OfText(Key.class, (text, type) -> key(text, type.getType())));
        CONVERSIONS.addConverter(new OfText(Code.class, (text, type) -> code(text, type.getType())));
        CONVERSIONS.addConverter(
                new OfText(List.class, (text, type) -> words(text, type).toList()));
        CONVERSIONS.addConverter(new OfText(
                Set.class,
                (text, type) -> Collections.unmodifiableSet(
                        new LinkedHashSet<>(words(text, type).toList()))));
    }

    private ColumnConversions() {}

    static @Nullable Object convert(Object held, TypeDescriptor type) {
        return CONVERSIONS.convert(held, type);
    }

    static <T> @Nullable T of(@Nullable String text, Class<T> type) {
        return CONVERSIONS.convert(text, type);
    }

    /** As what the database is asked for a value of this kind. */
    static Class<?> held(Class<?> type) {
        if (type == Instant.class) {
            return OffsetDateTime.class;
        }
        return isText(type) ? String.class : type;
    }

    /** Whether a column holds a value of this kind as text. */
    static boolean isText(Class<?> type) {
        return CONVERSIONS.canConvert(String.class, type);
    }

    /** A column that must not be null holds an empty text where there is no key. */
    private static @Nullable Object key(String text, Class<?> type) {
        return text.isEmpty() ? null : BeanUtils.instantiateClass(KEYS.get(type), text);
    }

    private static Object code(String text, Class<?> type) {
        return Stream.of(type.asSubclass(Code.class).getEnumConstants())
                .filter(code -> code.code().equals(text))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("There is no such " + type.getSimpleName()));
    }

    private static Stream<Object> words(String text, TypeDescriptor type) {
        TypeDescriptor kind = Objects.requireNonNull(type.getElementTypeDescriptor(), "a list says of what it is");
        return Stream.of(text.split(";"))
                .filter(word -> !word.isEmpty())
                .map(word -> Objects.requireNonNull(convert(word, kind), "a word stands for something"));
    }

    /** Makes a value of this kind, or of one below it, of its text. */
    private record OfText(Class<?> kind, BiFunction<String, TypeDescriptor, @Nullable Object> made)
            implements GenericConverter {

        @Override
        public Set<ConvertiblePair> getConvertibleTypes() {
            return Set.of(new ConvertiblePair(String.class, kind));
        }

        @Override
        public @Nullable Object convert(@Nullable Object text, TypeDescriptor from, TypeDescriptor to) {
            return text == null ? null : made.apply((String) text, to);
        }
    }
}
