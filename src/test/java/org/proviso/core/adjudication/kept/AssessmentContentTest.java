package org.proviso.core.adjudication.kept;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDateTime;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.proviso.core.adjudication.ClearCase;
import org.proviso.core.adjudication.judging.Assessment;
import org.proviso.core.adjudication.judging.ElectionClocks;
import org.proviso.core.adjudication.questions.QuestionContext;
import org.proviso.core.rules.ChangedPack;

/** What the kept content of an assessment says to whoever reads it years later without the program. */
class AssessmentContentTest {

    private static final ChangedPack EXAMPLE = ChangedPack.of("example");

    @Test
    void names_the_outcome_with_its_reasons_and_the_contests_that_count() {
        String content = content(new ClearCase()
                .with("ballot=other_style place=own_place")
                .ballots("PRES HOUSE SCHOOL", "PRES HOUSE SHERIFF"));
        assertThat(content)
                .contains("\"outcome\":{\"contests\":[\"PRES\",\"HOUSE\"],\"reasons\":[\"wrong_style_right_place\"],"
                        + "\"recommendation\":\"count_in_part\"}");
    }

    @Test
    void names_with_each_answer_the_rules_it_rests_on_and_where_they_are_written() {
        assertThat(content(new ClearCase().with("registration=late")))
                .contains("\"rests_on\":[{\"basis\":\"invented\",\"reference\":\"Example Election Code (invented) 2.2"
                        + " (2020)\",\"rule\":\"consequence.registered_late\",\"value\":\"reject\"}]");
    }

    @Test
    void names_what_an_open_answer_is_expected_to_be() {
        assertThat(content(new ClearCase().with("mail_ballots=outstanding")))
                .contains("\"answer\":\"open\",\"expected\":{\"answer\":\"clear\",");
    }

    private static String content(ClearCase facts) {
        QuestionContext setting = new QuestionContext(
                EXAMPLE.resolved(), new ElectionClocks(EXAMPLE.book(), LocalDateTime.of(2026, 11, 4, 12, 0), Map.of()));
        return AssessmentJson.write(Assessment.assess(facts.facts(), setting), Map.of());
    }
}
