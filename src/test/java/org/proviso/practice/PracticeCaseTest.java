package org.proviso.practice;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.proviso.practice.PracticeAnswers.Step;

/** The practice case is assessed by the program's own rules, and goes on only when an answer fits the paper. */
class PracticeCaseTest {

    @Test
    void the_rules_recommend_to_count_it_and_nothing_stands_in_the_way() {
        PracticeCase practice = new PracticeCase();
        assertThat(practice.recommendation()).isEqualTo("count");
        assertThat(practice.lines()).hasSize(8).allMatch(line -> line.answer().equals("Clear"));
    }

    @Test
    void the_date_is_accepted_in_the_ways_people_write_it_and_no_other() {
        assertThat(keyed("10/30/1961")).isEqualTo(Step.VOTER);
        assertThat(keyed(" 10-30-61 ")).isEqualTo(Step.VOTER);
        assertThat(keyed("10/30/1916")).isEqualTo(Step.KEY);
        assertThat(keyed("30/10/1961")).isEqualTo(Step.KEY);
        assertThat(keyed(null)).isEqualTo(Step.KEY);
    }

    @Test
    void each_step_waits_for_the_one_before() {
        assertThat(new PracticeAnswers("10/30/1961", "son", "agrees", "count").next())
                .isEqualTo(Step.VOTER);
        assertThat(new PracticeAnswers("10/30/1961", "father", null, "count").next())
                .isEqualTo(Step.SIGNATURE);
        assertThat(new PracticeAnswers("10/30/1961", "father", "differs", null).next())
                .isEqualTo(Step.PROPOSE);
        assertThat(new PracticeAnswers("10/30/1961", "father", "agrees", "reject").next())
                .isEqualTo(Step.DONE);
    }

    private static Step keyed(String born) {
        return new PracticeAnswers(born, null, null, null).next();
    }
}
