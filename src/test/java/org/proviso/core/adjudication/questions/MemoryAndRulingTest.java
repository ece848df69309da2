package org.proviso.core.adjudication.questions;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.proviso.core.Code;
import org.proviso.core.CountyRuling;
import org.proviso.core.rules.ChangedPack;
import org.proviso.core.rules.Reason;
import org.proviso.core.rules.Rule;

/** No ballot is rejected or cut on a value that nobody read, until the office signs a county ruling on it. */
class MemoryAndRulingTest {

    static List<AnswerTable> costly() {
        return AnswerTable.rows().stream().filter(AnswerTable::costsTheVoter).toList();
    }

    @ParameterizedTest
    @MethodSource("costly")
    void takes_nothing_from_a_voter_on_a_remembered_consequence(AnswerTable row) {
        ChangedPack pack = ChangedPack.of("example").fromMemory(consequence(row));

        assertThat(Asking.of(row.question(), row.facts(), pack.resolved())).isEqualTo("open; expected " + row.answer());
        assertThat(Asking.answer(
                                row.question(),
                                row.facts(),
                                new QuestionContext(pack.resolved(), new FixedClocks(AskStatus.RUNNING, false)))
                        .words())
                .contains("county ruling", consequence(row).key(), "from memory");
    }

    @ParameterizedTest
    @MethodSource("costly")
    void decides_once_the_office_has_signed_a_ruling(AnswerTable row) {
        ChangedPack pack = ChangedPack.of("example").fromMemory(consequence(row));

        assertThat(Asking.of(row.question(), row.facts(), pack.resolved(ruling(consequence(row), ""))))
                .isEqualTo(row.answer());
    }

    @ParameterizedTest
    @CsvSource({
        "identification.required_of, identification.met, identification=missing",
        "signature.rejected_by, signature.agrees, signature_comparison=differs_by_two",
        "cure.identification, identification.met, identification=supplied_late",
        "notice_required.identification, identification.met, identification=missing"
    })
    void rejects_on_no_remembered_rule_that_found_or_timed_the_reason(String key, String question, String facts) {
        Rule rule = Rule.find(key).orElseThrow();
        ChangedPack pack = ChangedPack.of("example").fromMemory(rule);

        assertThat(Asking.of(question, facts, pack.resolved(), AskStatus.OVER)).startsWith("open; expected reject");
        assertThat(Asking.of(question, facts, pack.resolved(ruling(rule, "")), AskStatus.OVER))
                .startsWith("reject");
    }

    /** While the voter still has time, nothing is taken away, and the ask goes out at once. */
    @Test
    void asks_the_voter_under_a_remembered_deadline() {
        ChangedPack pack = ChangedPack.of("example")
                .fromMemory(Rule.find("cure.identification").orElseThrow());
        assertThat(Asking.of("identification.met", "identification=missing", pack.resolved()))
                .isEqualTo("reject, cure identification, running: no_identification");
    }

    @Test
    void takes_a_value_from_a_ruling_where_the_pack_has_none() {
        Rule rule = Rule.consequence(Reason.VOTED_IN_PERSON);
        ChangedPack pack = ChangedPack.of("example").without(rule);

        assertThat(Asking.of("already_voted.check_in", "check_in=voted", pack.resolved(ruling(rule, "reject"))))
                .isEqualTo("reject: voted_in_person");
        assertThat(Asking.of("already_voted.check_in", "check_in=voted", pack.resolved(ruling(rule, ""))))
                .isEqualTo("open");
    }

    /** The federal floor alone: voting twice is a crime, but nobody has read that it rejects the later ballot. */
    @Test
    void rejects_nobody_under_the_federal_floor_without_a_ruling() {
        assertThat(AnswerTable.rows())
                .allSatisfy(row -> assertThat(Asking.of(
                                row.question(),
                                row.facts(),
                                ChangedPack.of("us").resolved(),
                                AskStatus.OVER))
                        .doesNotStartWith("reject")
                        .doesNotStartWith("in_part"));
    }

    private static Rule consequence(AnswerTable row) {
        return Rule.consequence(Code.find(Reason.class, row.reason()).orElseThrow());
    }

    private static CountyRuling ruling(Rule rule, String value) {
        return new CountyRuling(rule.key(), value, "A. Reyes, clerk", LocalDate.of(2026, 10, 1), "counsel's letter");
    }
}
