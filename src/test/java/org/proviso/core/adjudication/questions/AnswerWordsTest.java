package org.proviso.core.adjudication.questions;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.FieldFact;
import org.proviso.core.rules.ChangedPack;
import org.proviso.core.rules.ResolvedPack;

/** What a reader of a case sees of a question and its answer. */
class AnswerWordsTest {

    private static final ResolvedPack EXAMPLE = ChangedPack.of("example").resolved();

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "already_voted.mail_ballot | mail_ballots=none | No; none was sent",
                "already_voted.mail_ballot | mail_ballots=void | No; none that was returned counts",
                "already_voted.mail_ballot | mail_ballots=unknown | Open: whether the voter returned a mail ballot is not known yet",
                "envelope.field.date_of_birth | field.date_of_birth=not_a_date identity=not_on_roll | Open: the affirmation field date of birth is not a date; a person must judge it",
                "envelope.field.date_of_birth | field.date_of_birth=not_a_date identity=several_fit | Open: the affirmation field date of birth is not a date; a person must judge it",
                "envelope.field.date_of_birth | field.date_of_birth=not_a_date identity=presumed | Open: the affirmation field date of birth is not a date, which matters only if the voter cannot be identified",
                "envelope.field.date_of_birth | field.date_of_birth=not_a_date identity=confirmed | Written, but not a date; here that does not matter",
                "signature.agrees | voter_signature=missing | Not asked: there is no signature to compare",
                "registration.in_time | registration=late | Defect: the voter registered after the deadline"
            })
    void an_answer_begins_with_what_it_is_unless_nothing_stands_in_the_way(
            String question, String facts, String words) {
        assertThat(answer(question, facts).words()).isEqualTo(words);
    }

    @ParameterizedTest
    @EnumSource(QuestionHeading.class)
    void the_headings_are_numbered_from_one_in_the_order_of_the_trade(QuestionHeading heading) {
        assertThat(QuestionHeading.values()[heading.number() - 1]).isEqualTo(heading);
    }

    @Test
    void a_field_of_the_affirmation_is_asked_after_by_its_name() {
        assertThat(new FieldGiven(Fact.FIELD_ZIP).asks()).isEqualTo("Is the ZIP code filled in?");
        assertThat(answer("envelope.field.zip", "field.zip=" + FieldFact.KEYED.code())
                        .words())
                .isEqualTo("Yes");
    }

    private static Answer answer(String question, String facts) {
        return Asking.answer(question, facts, new QuestionContext(EXAMPLE, new FixedClocks(AskStatus.RUNNING, false)));
    }
}
