package org.proviso.access;

import jakarta.validation.constraints.Pattern;
import java.io.OutputStream;
import java.io.StringWriter;
import java.io.Writer;
import java.lang.reflect.Constructor;
import java.lang.reflect.Method;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.lang.reflect.WildcardType;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.ReceiptNumber;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.FactWord;
import org.proviso.core.adjudication.facts.RegistrationFact;
import org.proviso.core.rules.DeadlineBook;
import org.proviso.core.rules.PackResolver;
import org.proviso.files.packs.RulePacks;
import org.proviso.ledger.LedgerChain;

/** Values for the parameters of any method, made from their types: about one envelope of the office, or about nothing. */
record SampleArguments(EnvelopeKey key) {

    private static final LocalDate DAY = LocalDate.of(2026, 6, 3);

    private static final DeadlineBook RULES =
            DeadlineBook.of(PackResolver.resolve(RulePacks.load("example"), DAY, List.of()), Set.of());

    static SampleArguments of(EnvelopeKey key) {
        return new SampleArguments(key);
    }

    static SampleArguments ofNothing() {
        return new SampleArguments(new EnvelopeKey(new ElectionId("nowhere"), new EnvelopeNumber("NONE-1")));
    }

    Object[] of(Method method) {
        return Arrays.stream(method.getGenericParameterTypes()).map(this::value).toArray();
    }

    private Object value(Type type) {
        if (type instanceof ParameterizedType generic) {
            return many((Class<?>) generic.getRawType(), generic.getActualTypeArguments());
        }
        if (type instanceof WildcardType wild) {
            return value(wild.getUpperBounds()[0]);
        }
        return one((Class<?>) type);
    }

    private Object many(Class<?> raw, Type[] of) {
        if (raw == Map.class) {
            return Map.of(value(of[0]), value(of[1]));
        }
        if (raw == Set.class) {
            return Set.of(value(of[0]));
        }
        if (raw == Optional.class) {
            return Optional.empty();
        }
        return raw == List.class || raw == Collection.class ? List.of(value(of[0])) : one(raw);
    }

    private Object one(Class<?> type) {
        Object known = known(type);
        if (known != null) {
            return known;
        }
        if (type.isEnum()) {
            return type.getEnumConstants()[0];
        }
        if (type.isRecord()) {
            return record(type);
        }
        if (type.isSealed()) {
            return one(type.getPermittedSubclasses()[0]);
        }
        throw new IllegalStateException("no value for a parameter of " + type);
    }

    private Object known(Class<?> type) {
        return Map.<Class<?>, Object>ofEntries(
                        Map.entry(ElectionId.class, key.electionId()),
                        Map.entry(EnvelopeNumber.class, key.envelopeNo()),
                        Map.entry(ReceiptNumber.class, new ReceiptNumber("NONE-1")),
                        Map.entry(EnvelopeKey.class, key),
                        Map.entry(LedgerChain.class, LedgerChain.of(key.electionId())),
                        Map.entry(String.class, "nobody"),
                        Map.entry(Object.class, "nobody"),
                        Map.entry(int.class, 1),
                        Map.entry(Integer.class, 1),
                        Map.entry(long.class, 1L),
                        Map.entry(boolean.class, true),
                        Map.entry(byte[].class, new byte[] {1}),
                        Map.entry(Path.class, Path.of("no-such-folder")),
                        Map.entry(Writer.class, new StringWriter()),
                        Map.entry(OutputStream.class, OutputStream.nullOutputStream()),
                        Map.entry(LocalDate.class, DAY),
                        Map.entry(LocalTime.class, LocalTime.NOON),
                        Map.entry(LocalDateTime.class, DAY.atTime(LocalTime.NOON)),
                        Map.entry(Instant.class, Instant.parse("2026-06-03T18:00:00Z")),
                        Map.entry(DeadlineBook.class, RULES),
                        Map.entry(Fact.class, Fact.REGISTRATION),
                        Map.entry(FactWord.class, RegistrationFact.values()[0]))
                .get(type);
    }

    /** A word in the letters that the part allows. */
    private static String text(Class<?> type, RecordComponent part) {
        try {
            Pattern form = type.getDeclaredField(part.getName()).getAnnotation(Pattern.class);
            return form == null || "nobody".matches(form.regexp()) ? "nobody" : "NOBODY";
        } catch (NoSuchFieldException e) {
            throw new IllegalStateException(e);
        }
    }

    private Object record(Class<?> type) {
        Class<?>[] types = Arrays.stream(type.getRecordComponents())
                .map(RecordComponent::getType)
                .toArray(Class<?>[]::new);
        Object[] values = Arrays.stream(type.getRecordComponents())
                .map(part -> part.getType() == String.class ? text(type, part) : value(part.getGenericType()))
                .toArray();
        try {
            Constructor<?> canonical = type.getDeclaredConstructor(types);
            canonical.setAccessible(true);
            return canonical.newInstance(values);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("no value of " + type, e);
        }
    }
}
