package org.proviso.core.adjudication.facts;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The vocabulary of a case, as a reviewer and the exported run read it. */
class FactTest {

    static List<Fact<?>> facts() {
        return Fact.all();
    }

    /** The words end up in sentences: "Condition of the envelope: sealed." */
    @ParameterizedTest
    @MethodSource("facts")
    void every_word_of_a_fact_has_a_meaning_of_its_own_that_fits_into_a_sentence(Fact<?> fact) {
        List<String> meanings =
                fact.words().stream().map(word -> ((FactWord) word).meaning()).toList();
        assertThat(meanings)
                .doesNotHaveDuplicates()
                .allSatisfy(meaning -> assertThat(meaning).isNotBlank().doesNotEndWith("."));
    }

    @ParameterizedTest
    @MethodSource("facts")
    void there_is_one_fact_of_each_key(Fact<?> fact) {
        assertThat(Fact.find(fact.key()).orElseThrow()).isSameAs(fact);
        assertThat(Fact.all()).filteredOn(other -> other.equals(fact)).hasSize(1);
    }

    @Test
    void a_key_that_no_fact_has_finds_nothing() {
        assertThat(Fact.find("mood")).isEmpty();
    }
}
