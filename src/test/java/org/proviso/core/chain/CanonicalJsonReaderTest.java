package org.proviso.core.chain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** What was written in the one spelling is read back, and nothing else is. */
class CanonicalJsonReaderTest {

    private static final List<String> NOT_CANONICAL = List.of(
            "",
            "{",
            "[]",
            "{}x",
            "{ }",
            "{\"a\":1,}",
            "{,\"a\":1}",
            "{\"b\":1,\"a\":2}",
            "{\"a\":1,\"a\":1}",
            "{\"a\":null}",
            "{\"a\":1.5}",
            "{\"a\":--1}",
            "{\"a\":truth}",
            "{\"a\":\"\\x\"}",
            "{\"a\":\"\\u00zz\"}",
            "{\"a\":\"\\u00",
            "{\"a\":\"open",
            "{\"a\":[1 2]}",
            "{\"a\" :1}");

    @Property
    void reads_back_every_value_that_can_be_written(@ForAll("objects") Map<String, Object> object) {
        String text = CanonicalJson.of(object);
        assertThat(CanonicalJsonReader.object(text)).isEqualTo(object);
        assertThat(CanonicalJsonReader.list(CanonicalJson.of(List.of(object)))).containsExactly(object);
    }

    @Example
    void refuses_what_nobody_wrote_and_says_where() {
        for (String text : NOT_CANONICAL) {
            assertThatIllegalArgumentException()
                    .as(text)
                    .isThrownBy(() -> CanonicalJsonReader.object(text))
                    .withMessageStartingWith("at character ");
        }
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CanonicalJsonReader.object("{\"a\":1.5}"))
                .withMessage("at character 7: expected ,");
        assertThatIllegalArgumentException().isThrownBy(() -> CanonicalJsonReader.list("[1]]"));
    }

    @Provide
    Arbitrary<Map<String, Object>> objects() {
        return objects(2);
    }

    private static Arbitrary<Map<String, Object>> objects(int depth) {
        return Arbitraries.maps(texts(), values(depth)).ofMaxSize(4);
    }

    private static Arbitrary<Object> values(int depth) {
        Arbitrary<Object> flat = Arbitraries.oneOf(
                texts().map(text -> (Object) text),
                Arbitraries.longs().map(number -> (Object) number),
                Arbitraries.of(true, false).map(flag -> (Object) flag));
        return depth == 0
                ? flat
                : Arbitraries.oneOf(
                        flat,
                        values(depth - 1).list().ofMaxSize(3).map(list -> (Object) list),
                        objects(depth - 1).map(object -> (Object) object));
    }

    private static Arbitrary<String> texts() {
        return Arbitraries.strings().ofMaxLength(8);
    }
}
