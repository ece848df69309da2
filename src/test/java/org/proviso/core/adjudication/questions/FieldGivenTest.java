package org.proviso.core.adjudication.questions;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.proviso.core.rules.ChangedPack;
import org.proviso.core.rules.ResolvedPack;
import org.proviso.core.rules.RuleValue;
import org.proviso.core.rules.Rules;

/** Under the example pack a required field matters only where nobody can tell who the voter is. */
class FieldGivenTest {

    private static final ResolvedPack EXAMPLE = ChangedPack.of("example").resolved();
    private static final String INCOMPLETE = "reject, cure affirmation, running: affirmation_incomplete";

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "confirmed | left_blank | clear",
                "confirmed | not_yet_keyed | clear",
                "confirmed | unknown | clear",
                "not_on_roll | illegible | " + INCOMPLETE,
                "not_on_roll | refused | " + INCOMPLETE,
                "not_on_roll | not_yet_keyed | open; expected " + INCOMPLETE,
                "not_on_roll | unknown | open; expected " + INCOMPLETE,
                "none_fits | left_blank | open; expected " + INCOMPLETE,
                "presumed | left_blank | open; expected clear",
                "one_fits_well | left_blank | open",
                "several_fit | left_blank | open",
                "unknown | left_blank | open"
            })
    void weighs_an_empty_required_field_by_whether_the_voter_is_known(String identity, String field, String answer) {
        String facts = "identity=" + identity + " field.date_of_birth=" + field;
        assertThat(Asking.of("envelope.field.date_of_birth", facts, EXAMPLE)).isEqualTo(answer);
    }

    @ParameterizedTest
    @ValueSource(strings = {"city", "zip", "id_last4", "statements_ticked"})
    void gives_no_weight_to_a_field_the_law_does_not_ask_for(String field) {
        for (String state : List.of("left_blank", "illegible", "refused", "not_yet_keyed", "unknown")) {
            String facts = "identity=not_on_roll field." + field + "=" + state;
            assertThat(Asking.of("envelope.field." + field, facts, EXAMPLE)).isEqualTo("clear");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"last_name", "first_name", "date_of_birth", "residence_address_line"})
    void asks_every_required_field_alike(String field) {
        String empty = "identity=not_on_roll field." + field + "=left_blank";
        String filled = "identity=not_on_roll field." + field + "=keyed";
        assertThat(Asking.of("envelope.field." + field, empty, EXAMPLE)).isEqualTo(INCOMPLETE);
        assertThat(Asking.of("envelope.field." + field, filled, EXAMPLE)).isEqualTo("clear");
    }

    /** 52 USC 10101(a)(2)(B), from memory: what does not matter to eligibility has no effect. */
    @Test
    void never_holds_an_omission_against_the_voter_where_the_law_says_never() {
        assertThat(under("never", "left_blank")).isEqualTo("clear");
    }

    @Test
    void holds_it_against_the_voter_where_the_law_always_does() {
        assertThat(under("always", "left_blank")).isEqualTo(INCOMPLETE);
        assertThat(under("always", "not_yet_keyed")).isEqualTo("open; expected " + INCOMPLETE);
        assertThat(under("always", "unknown")).isEqualTo("open; expected " + INCOMPLETE);
    }

    @Test
    void stays_open_where_nobody_could_source_the_rule() {
        String facts = "field.last_name=left_blank";
        for (var rule : List.of(Rules.OMISSIONS_MATTER, Rules.REQUIRED_FIELDS)) {
            ResolvedPack pack = ChangedPack.of("example").without(rule).resolved();
            assertThat(Asking.of("envelope.field.last_name", facts, pack)).isEqualTo("open");
            assertThat(Asking.of("envelope.field.last_name", "field.last_name=keyed", pack))
                    .isEqualTo("clear");
        }
    }

    private static String under(String omissions, String state) {
        ResolvedPack pack = ChangedPack.of("example")
                .with(Rules.OMISSIONS_MATTER, new RuleValue.Word(omissions))
                .resolved();
        return Asking.of("envelope.field.last_name", "field.last_name=" + state, pack);
    }
}
