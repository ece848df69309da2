package org.proviso.core.adjudication.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.proviso.core.adjudication.facts.CheckInFact;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.finding.FactReader;
import org.proviso.core.adjudication.questions.Answer;
import org.proviso.core.adjudication.questions.AskStatus;
import org.proviso.core.adjudication.questions.Question;
import org.proviso.core.adjudication.questions.QuestionContext;
import org.proviso.core.adjudication.questions.QuestionHeading;
import org.proviso.core.adjudication.questions.QuestionList;
import org.proviso.core.rules.Ask;
import org.proviso.core.rules.ChangedPack;

class TupleTest {

    /** A question that looks at the ballot without saying so. */
    private record Sly(Set<Fact<?>> reads) implements Question {
        @Override
        public String key() {
            return "sly";
        }

        @Override
        public QuestionHeading heading() {
            return QuestionHeading.ANYTHING_ELSE;
        }

        @Override
        public String asks() {
            return "Sly?";
        }

        @Override
        public Answer answer(FactReader facts, QuestionContext setting) {
            facts.one(Fact.CHECK_IN);
            return setting.clear("Yes " + facts.one(Fact.BALLOT));
        }
    }

    @Test
    void fails_a_question_that_reads_what_it_does_not_declare() {
        QuestionContext setting =
                new QuestionContext(ChangedPack.of("example").resolved(), new ProofClocks(AskStatus.OVER, false));
        Question sly = new Sly(Set.of(Fact.CHECK_IN));
        Tuple first = Tuple.of(sly).get(0);

        assertThatIllegalStateException()
                .isThrownBy(() -> sly.answer(first, setting))
                .withMessage("the question reads ballot, which it does not declare");
        Question honest = new Sly(Set.of(Fact.CHECK_IN, Fact.BALLOT));
        assertThat(Tuple.of(honest))
                .allSatisfy(tuple -> assertThat(honest.answer(tuple, setting)).isNotNull());
    }

    @Test
    void goes_through_about_a_thousand_combinations_of_facts() {
        int tuples = QuestionList.all().stream()
                .mapToInt(question -> Tuple.of(question).size())
                .sum();
        assertThat(tuples).isBetween(900, 1_300);
    }

    /** Each word and unknown; of a fact of which several may hold, every set of its words. */
    @Test
    void has_a_tuple_for_every_state_of_each_fact() {
        assertThat(Tuple.of(new Sly(Set.of(Fact.CHECK_IN)))).hasSize(5).doesNotHaveDuplicates();
        assertThat(Tuple.of(new Sly(Set.of(Fact.MAIL_BALLOTS)))).hasSize(513).doesNotHaveDuplicates();
        assertThat(Tuple.of(new Sly(Set.of(Fact.BALLOT, Fact.CHECK_IN)))).hasSize(15);
    }

    @Test
    void completes_what_is_unknown_in_every_way_and_leaves_what_is_known() {
        List<Tuple> tuples = Tuple.of(new Sly(Set.of(Fact.BALLOT, Fact.CHECK_IN)));
        Tuple nothing = tuples.get(0);
        assertThat(nothing.hasUnknown()).isTrue();
        assertThat(nothing.known()).isZero();
        assertThat(nothing.completions()).hasSize(8).noneMatch(Tuple::hasUnknown);

        Tuple half = nothing.with(Fact.CHECK_IN, Set.of(CheckInFact.VOTED));
        assertThat(half.completions()).hasSize(2).allMatch(tuple -> tuple.holds(Fact.CHECK_IN, CheckInFact.VOTED));
        assertThat(half.holds(Fact.BALLOT, CheckInFact.VOTED)).isFalse();
        assertThat(half.sentence())
                .isEqualTo(
                        "check_in is voted (a reviewer saw the voter's signature in the poll book), ballot is not known");
    }

    @Test
    void reads_as_a_sentence() {
        List<Tuple> mail = Tuple.of(new Sly(Set.of(Fact.MAIL_BALLOTS)));
        assertThat(mail.get(1).sentence()).isEqualTo("mail_ballots is empty");
        assertThat(mail.get(4).sentence())
                .isEqualTo(
                        "mail_ballots is outstanding and surrendered (not returned; surrendered at the voting location)");
    }

    @Test
    void sets_the_clocks_in_every_way() {
        assertThat(ProofClocks.all()).hasSize(8).doesNotHaveDuplicates();
        ProofClocks world = new ProofClocks(AskStatus.OVER_WITHOUT_NOTICE, true);
        assertThat(world.words())
                .isEqualTo("the time to cure is over, and no notice was logged; mail ballots may no longer arrive");
        assertThat(world.ask(Ask.SIGNATURE)).isEqualTo(AskStatus.OVER_WITHOUT_NOTICE);
        assertThat(world.deadline(Ask.SIGNATURE)).isEmpty();
    }
}
