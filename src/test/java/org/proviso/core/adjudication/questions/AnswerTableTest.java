package org.proviso.core.adjudication.questions;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.FactWord;
import org.proviso.core.rules.ChangedPack;
import org.proviso.core.rules.ResolvedPack;

class AnswerTableTest {

    private static final ResolvedPack EXAMPLE = ChangedPack.of("example").resolved();

    static List<AnswerTable> rows() {
        return AnswerTable.rows();
    }

    @ParameterizedTest
    @MethodSource("rows")
    void answers_each_word_as_the_table_says_and_reads_only_what_it_declares(AnswerTable row) {
        assertThat(Asking.of(row.question(), row.facts(), EXAMPLE)).isEqualTo(row.answer());
    }

    @Test
    void has_a_row_for_each_word_of_each_fact_and_for_not_knowing_it() {
        List<String> wanted = new ArrayList<>();
        for (Question question : QuestionList.all()) {
            if (question instanceof FieldGiven) {
                continue; // A test of their own: the eight fields are asked alike.
            }
            for (Fact<?> fact : question.reads()) {
                fact.words().forEach(word -> wanted.add(cell(question, fact, ((FactWord) word).code())));
                wanted.add(cell(question, fact, "unknown"));
            }
        }

        assertThat(rows().stream().map(row -> row.question() + " " + row.facts()))
                .containsAll(wanted);
    }

    @Test
    void asks_each_question_once_under_a_key_of_its_own() {
        assertThat(QuestionList.all()).extracting(Question::key).doesNotHaveDuplicates();
        assertThat(QuestionList.all()).isSortedAccordingTo((a, b) -> a.heading().compareTo(b.heading()));
        assertThat(QuestionList.all())
                .allSatisfy(question -> assertThat(question.asks()).endsWith("?"));
    }

    private static String cell(Question question, Fact<?> fact, String word) {
        return question.key() + " " + fact.key() + "=" + word;
    }
}
