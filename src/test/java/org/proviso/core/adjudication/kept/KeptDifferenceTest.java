package org.proviso.core.adjudication.kept;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.proviso.SampleCases;
import org.proviso.core.adjudication.judging.Assessment;
import org.proviso.core.adjudication.judging.Recommendation;

/** What a replay says of an assessment that does not come out as it was kept. */
class KeptDifferenceTest {

    private static final SampleCases CASES = SampleCases.presumed("tamarack-primary");
    private static final KeptAssessment KEPT = KeptAssessment.of(
                    CASES.reports().get(0), Map.of(), CASES.book(), CASES.asOf())
            .get(0);

    private static KeptAssessment with(Recommendation recommendation, int engine, String content) {
        return new KeptAssessment(
                KEPT.way(),
                KEPT.facts(),
                KEPT.asOf(),
                KEPT.packHash(),
                engine,
                recommendation,
                List.of(),
                KEPT.heldApart(),
                content);
    }

    private static KeptAssessment content(String content) {
        return with(KEPT.recommendation(), KEPT.engineVersion(), content);
    }

    @Test
    void the_same_does_not_differ() {
        assertThat(KEPT.difference(KEPT)).isEmpty();
    }

    @Test
    void content_made_from_something_else_is_called_so() {
        KeptAssessment older = with(KEPT.recommendation(), Assessment.ENGINE_VERSION - 1, KEPT.content());
        assertThat(older.origins().areOfThisEngine()).isFalse();
        assertThat(older.difference(KEPT))
                .isEqualTo("its content names facts, rules or a time other than those stored with it");
    }

    @Test
    void the_parts_of_the_content_that_differ_are_named() {
        String flipped = KEPT.content().contains("\"held_apart\":false")
                ? KEPT.content().replace("\"held_apart\":false", "\"held_apart\":true")
                : KEPT.content().replace("\"held_apart\":true", "\"held_apart\":false");
        String more = flipped.replaceFirst("^\\{", "{\"added\":1,");
        assertThat(content(more).difference(KEPT)).isEqualTo("recomputed, it differs in: added, held apart");
    }

    @Test
    void what_stands_beside_the_content_is_compared_too() {
        KeptAssessment changed = with(Recommendation.SENT_ON, KEPT.engineVersion(), KEPT.content());
        assertThat(KEPT.recommendation()).isNotEqualTo(Recommendation.SENT_ON);
        assertThat(changed.difference(KEPT))
                .isEqualTo("its recommendation, reasons or held-apart mark differ from its content");
    }
}
