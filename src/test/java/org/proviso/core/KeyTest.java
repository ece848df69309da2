package org.proviso.core;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What can be a key, and what is none. */
class KeyTest {

    private static final String LONGEST = "x".repeat(60);

    static Stream<Function<String, Key>> kinds() {
        return Stream.of(ElectionId::new, EnvelopeNumber::new, ReceiptNumber::new, VoterId::new, UserName::new);
    }

    static Stream<Function<String, ?>> typed() {
        return Stream.of(
                text -> ElectionId.find(text).orElse(null),
                text -> EnvelopeNumber.find(text).orElse(null),
                text -> ReceiptNumber.find(text).orElse(null),
                text -> VoterId.find(text).orElse(null),
                text -> UserName.find(text).orElse(null));
    }

    static Stream<Function<String, ?>> columns() {
        return Stream.of(
                ElectionId::orNull, EnvelopeNumber::orNull, ReceiptNumber::orNull, VoterId::orNull, UserName::orNull);
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void a_key_is_its_text_and_neither_blank_nor_longer_than_a_column(Function<String, Key> kind) {
        assertThat(kind.apply("A-1").value()).isEqualTo("A-1");
        assertThat(kind.apply("A-1")).hasToString("A-1").isEqualTo(kind.apply("A-1"));
        assertThat(kind.apply(LONGEST).value()).hasSize(60);
        assertThatThrownBy(() -> kind.apply(" ")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> kind.apply(LONGEST + "x")).hasMessageContaining("is not ");
    }

    @ParameterizedTest
    @MethodSource("typed")
    void what_cannot_be_a_key_is_found_to_be_none(Function<String, ?> find) {
        assertThat(find.apply("A-1")).hasToString("A-1");
        assertThat(find.apply("")).isNull();
        assertThat(find.apply(LONGEST + "x")).isNull();
    }

    @ParameterizedTest
    @MethodSource("columns")
    void an_empty_column_holds_no_key(Function<String, ?> column) {
        assertThat(column.apply(null)).isNull();
        assertThat(column.apply("A-1")).hasToString("A-1");
    }

    @Test
    void keys_read_one_after_the_other_and_stand_in_order() {
        List<VoterId> voters = List.of(new VoterId("V-2"), new VoterId("V-1"));
        assertThat(Key.join(", ", voters)).isEqualTo("V-2, V-1");
        assertThat(voters.stream().sorted()).first().hasToString("V-1");
        assertThat(Key.text(null)).isNull();
        assertThat(Key.text(voters.get(0))).isEqualTo("V-2");
    }

    @Test
    void cases_are_locked_by_election_and_then_by_envelope() {
        EnvelopeKey first = new EnvelopeKey(new ElectionId("a"), new EnvelopeNumber("2"));
        EnvelopeKey second = new EnvelopeKey(new ElectionId("b"), new EnvelopeNumber("1"));
        assertThat(first).isLessThan(second);
        assertThat(first).isGreaterThan(new EnvelopeKey(new ElectionId("a"), new EnvelopeNumber("1")));
    }
}
