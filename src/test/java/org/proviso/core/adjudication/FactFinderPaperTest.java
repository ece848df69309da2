package org.proviso.core.adjudication;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.proviso.core.Envelope;
import org.proviso.core.PersonName;
import org.proviso.core.YesNo;
import org.proviso.core.adjudication.facts.Fact;

class FactFinderPaperTest {

    private final SmallCase small = new SmallCase();

    @ParameterizedTest
    @EnumSource(Envelope.Condition.class)
    void takes_the_condition_of_the_envelope_as_noted(Envelope.Condition condition) {
        small.envelope.condition = condition;
        assertThat(small.word(Fact.ENVELOPE)).isEqualTo(condition.code());
    }

    @ParameterizedTest
    @CsvSource({
        "YES, UNKNOWN, signed",
        "NO, UNKNOWN, missing",
        "MARK, YES, mark_witnessed",
        "MARK, NO, mark_not_witnessed",
        "MARK, UNKNOWN, unknown",
        "UNKNOWN, YES, unknown"
    })
    void knows_how_the_voter_signed(Envelope.VoterSignature signed, YesNo witness, String word) {
        small.envelope.signed = signed;
        small.envelope.witness = witness;
        assertThat(small.word(Fact.VOTER_SIGNATURE)).isEqualTo(word);
    }

    @ParameterizedTest
    @CsvSource({"YES, signed", "NO, missing", "UNKNOWN, unknown"})
    void knows_whether_the_official_signed(YesNo signed, String word) {
        small.envelope.officialSigned = signed;
        assertThat(small.word(Fact.OFFICIAL_SIGNATURE)).isEqualTo(word);
    }

    @Test
    void takes_a_filled_field_for_keyed() {
        for (Fact<?> fact : Fact.all()) {
            if (fact.key().startsWith("field.")) {
                assertThat(small.word(fact)).as(fact.key()).isEqualTo("keyed");
            }
        }
    }

    @Test
    void a_date_of_birth_that_is_none_is_told_as_the_voter_wrote_it() {
        small.envelope.born = null;
        small.envelope.bornAsWritten = "13/40/1980";
        assertThat(small.word(Fact.FIELD_BIRTH_DATE)).isEqualTo("not_a_date");
        assertThat(small.evidence(Fact.FIELD_BIRTH_DATE))
                .isEqualTo("The voter wrote \"13/40/1980\" as the date of birth, which is not a date.");
        small.envelope.states.put(Envelope.Field.DATE_OF_BIRTH, Envelope.FieldState.ILLEGIBLE);
        assertThat(small.word(Fact.FIELD_BIRTH_DATE)).isEqualTo("illegible");
    }

    @Test
    void does_not_guess_why_a_field_is_empty() {
        small.envelope.name = new PersonName("", "", "", "");
        small.envelope.born = null;
        small.envelope.address = "";
        small.envelope.city = " ";
        small.envelope.zip = "";
        small.envelope.idLast4 = "";
        small.envelope.ticked = Set.of();
        for (Fact<?> fact : Fact.all()) {
            if (fact.key().startsWith("field.")) {
                assertThat(small.word(fact)).as(fact.key()).isEqualTo("unknown");
            }
        }
    }

    @ParameterizedTest
    @EnumSource(Envelope.FieldState.class)
    void takes_the_state_of_a_field_that_the_keying_noted(Envelope.FieldState state) {
        small.envelope.born = null;
        small.envelope.states.put(Envelope.Field.DATE_OF_BIRTH, state);
        assertThat(small.word(Fact.FIELD_BIRTH_DATE)).isEqualTo(state.code());
    }

    @ParameterizedTest
    @CsvSource({
        "YES, '', noted, A poll worker sent the voter here.",
        "YES, Wrong line, noted, 'The poll worker noted: \"Wrong line\"'",
        "NO, Rainy day, not_noted, 'The poll worker noted: \"Rainy day\"'",
        "UNKNOWN, '', not_noted, ''"
    })
    void knows_an_officials_own_note_of_an_error(YesNo sent, String note, String word, String evidence) {
        small.envelope.sentByOfficial = sent;
        small.envelope.note = note;
        assertThat(small.word(Fact.OFFICIAL_ERROR)).isEqualTo(word);
        assertThat(small.evidence(Fact.OFFICIAL_ERROR)).isEqualTo(evidence);
    }

    @Test
    void takes_a_challenge_for_pending_until_somebody_says_how_it_ended() {
        assertThat(small.word(Fact.CHALLENGE)).isEqualTo("none");
        small.envelope.issueReasons = Set.of("challenged");
        assertThat(small.word(Fact.CHALLENGE)).isEqualTo("pending");
    }

    @Test
    void says_of_each_thing_that_was_not_recorded_what_it_is() {
        small.envelope.signed = Envelope.VoterSignature.UNKNOWN;
        small.envelope.officialSigned = YesNo.UNKNOWN;
        small.envelope.condition = Envelope.Condition.UNKNOWN;
        small.envelope.born = null;
        assertThat(small.evidence(Fact.VOTER_SIGNATURE)).isEqualTo("The record does not say whether the voter signed.");
        assertThat(small.evidence(Fact.OFFICIAL_SIGNATURE))
                .isEqualTo("The record does not say whether the poll worker signed.");
        assertThat(small.evidence(Fact.ENVELOPE)).isEqualTo("The condition of the envelope was not recorded.");
        assertThat(small.evidence(Fact.FIELD_BIRTH_DATE))
                .isEqualTo("Field date of birth is empty; no reason was recorded.");
        small.envelope.signed = Envelope.VoterSignature.MARK;
        assertThat(small.evidence(Fact.VOTER_SIGNATURE))
                .isEqualTo("The voter made a mark; the record does not say whether a witness signed.");
    }
}
