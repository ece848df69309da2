package org.proviso.core.matching;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.proviso.core.matching.Weights.Field;
import org.proviso.core.matching.grades.DateGrade;
import org.proviso.core.matching.grades.GivenGrade;
import org.proviso.core.matching.grades.NumberGrade;
import org.proviso.core.matching.index.RollFrequencies;
import org.proviso.core.matching.index.RollIndex;
import org.proviso.core.matching.index.RollIndexBuilder;

/** Weights learned from an election without known answers: near what was reasoned for a few, its own for many. */
class WeightEstimationTest {

    private static final MessyElection election = messy();
    private static final RollIndex index = index();

    @Test
    void a_few_envelopes_leave_the_reasoned_weights_nearly_as_they_are() {
        Weights few = estimate(election.envelopes.subList(0, 10));
        for (GivenGrade grade : GivenGrade.values()) {
            assertThat(few.own(Field.GIVEN, grade, -10))
                    .isCloseTo(
                            Weights.REASONED.own(Field.GIVEN, grade, -10),
                            org.assertj.core.api.Assertions.within(0.25));
        }
    }

    @Test
    void many_envelopes_teach_how_they_are_written_and_how_many_voters_are_on_the_roll() {
        Weights many = estimate(election.envelopes.stream()
                .map(WeightEstimationTest::withWrongLastDigit)
                .toList());
        assertThat(many.own(Field.LAST4, NumberGrade.SLIP, 0))
                .isGreaterThan(Weights.REASONED.own(Field.LAST4, NumberGrade.SLIP, 0) + 2);
        assertThat(many.prior().onRoll()).isBetween(0.65, 0.80);
        assertThat(many.prior().relativeOnRoll()).isEqualTo(Weights.Prior.REASONED.relativeOnRoll());
    }

    @Test
    void what_relatives_show_is_never_learned() {
        Weights many = estimate(election.envelopes);
        assertThat(many.own(Field.GIVEN, GivenGrade.DIFFERENT, 0))
                .isEqualTo(Weights.REASONED.own(Field.GIVEN, GivenGrade.DIFFERENT, 0));
        assertThat(many.own(Field.DATE, DateGrade.CONFLICT, 0))
                .isEqualTo(Weights.REASONED.own(Field.DATE, DateGrade.CONFLICT, 0));
    }

    @Test
    void links_by_learned_weights_are_as_good() {
        Matcher matcher = new Matcher(index).estimatedFrom(election.envelopes, 2);
        Tally tally = Tally.of(matcher.matchAll(election.envelopes, 2), election.truth);
        assertThat(tally.f1()).as(tally.toString()).isGreaterThanOrEqualTo(0.993);
        assertThat(tally.surePrecision()).as(tally.toString()).isGreaterThanOrEqualTo(0.999);
    }

    @Test
    void the_same_envelopes_give_the_same_links_on_any_number_of_threads() {
        List<BestCandidate> onOneThread =
                new Matcher(index).estimatedFrom(election.envelopes, 1).pairAll(election.envelopes, 1);
        List<BestCandidate> onThreeThreads =
                new Matcher(index).estimatedFrom(election.envelopes, 3).pairAll(election.envelopes, 3);
        assertThat(onThreeThreads).isEqualTo(onOneThread);
    }

    private static MatchQuery withWrongLastDigit(MatchQuery query) {
        String number = query.idLast4();
        String wrong = number.isEmpty() ? "" : number.substring(0, 3) + (number.charAt(3) == '9' ? 8 : 9);
        return new MatchQuery(
                query.envelopeNo(),
                query.name(),
                query.formerName(),
                query.birthDate(),
                query.residence(),
                query.former(),
                wrong,
                query.driversLicense());
    }

    private Weights estimate(List<MatchQuery> queries) {
        RollFrequencies frequencies = new RollFrequencies(index);
        MatchTask task = new MatchTask(index, frequencies, Weights.REASONED);
        List<WeightEstimation.SampledEnvelope> seen =
                queries.stream().map(EnvelopePerson::of).map(task::look).toList();
        return new WeightEstimation(index, frequencies, seen).estimate();
    }

    private static RollIndex index() {
        RollIndexBuilder builder = RollIndex.builder();
        election.roll.forEach(person -> builder.add(person.entry()));
        return builder.build();
    }

    private static MessyElection messy() {
        try {
            return new MessyElection(815, 20_000, 3_000);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
