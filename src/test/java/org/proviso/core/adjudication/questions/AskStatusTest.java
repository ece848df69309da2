package org.proviso.core.adjudication.questions;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.proviso.core.rules.ChangedPack;
import org.proviso.core.rules.ResolvedPack;

/** A curable reason under each state of its clock. */
class AskStatusTest {

    private static final ResolvedPack EXAMPLE = ChangedPack.of("example").resolved();

    static List<AnswerTable> curable() {
        return AnswerTable.rows().stream()
                .filter(row -> row.costsTheVoter() && row.answer().contains("cure"))
                .toList();
    }

    @Test
    void knows_all_curable_reasons_of_the_example() {
        assertThat(curable())
                .extracting(AnswerTable::reason)
                .contains(
                        "no_identification",
                        "affirmation_not_signed",
                        "mark_not_witnessed",
                        "registration_pending",
                        "signature_differs");
    }

    @ParameterizedTest
    @MethodSource("curable")
    void is_final_only_when_time_ran_out_after_notice(AnswerTable row) {
        assertThat(answer(row, AskStatus.RUNNING))
                .isInstanceOfSatisfying(
                        Answer.Defect.class,
                        defect -> assertThat(defect.isFinal()).isFalse());
        assertThat(answer(row, AskStatus.OVER))
                .isInstanceOfSatisfying(
                        Answer.Defect.class,
                        defect -> assertThat(defect.isFinal()).isTrue());
    }

    @ParameterizedTest
    @MethodSource("curable")
    void is_for_a_person_when_no_notice_is_logged_or_no_source_says_until_when(AnswerTable row) {
        assertThat(answer(row, AskStatus.OVER_WITHOUT_NOTICE)).isInstanceOfSatisfying(Answer.Open.class, open -> {
            assertThat(open.expected()).isNull();
            assertThat(open.missing()).contains("ran out, but no notice was logged as sent in time");
        });
        assertThat(answer(row, AskStatus.NOT_SETTLED).words()).contains("the office must sign a county ruling");
    }

    private static Answer answer(AnswerTable row, AskStatus clock) {
        return Asking.answer(row.question(), row.facts(), new QuestionContext(EXAMPLE, new FixedClocks(clock, false)));
    }
}
