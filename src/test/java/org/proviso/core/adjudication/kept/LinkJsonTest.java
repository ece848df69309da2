package org.proviso.core.adjudication.kept;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.proviso.core.VoterId;
import org.proviso.core.adjudication.facts.VoterIdentityFact;
import org.proviso.core.adjudication.finding.Link;
import org.proviso.core.matching.Candidate;

/** A link that is kept comes back as it was, to the last figure. */
class LinkJsonTest {

    private static final Link SEVERAL = new Link(
            VoterIdentityFact.SEVERAL_FIT,
            null,
            0.1 + 0.2,
            List.of("Two fit.", "Same \"nickname\"."),
            List.of(
                    new Candidate(new VoterId("V1"), 0.1 + 0.2, List.of("Same surname.", "Same house.")),
                    new Candidate(new VoterId("V2"), 1e-9, List.of())));

    @Test
    void the_sentences_and_the_candidates_come_back() {
        assertThat(LinkJson.likeness(SEVERAL)).isEqualTo("[\"Two fit.\",\"Same \\\"nickname\\\".\"]");
        Link back = LinkJson.read(
                SEVERAL.identity(),
                SEVERAL.voterId(),
                SEVERAL.probability(),
                LinkJson.likeness(SEVERAL),
                LinkJson.candidates(SEVERAL));
        assertThat(back).isEqualTo(SEVERAL);
    }

    @Test
    void a_text_of_another_kind_is_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LinkJson.read(SEVERAL.identity(), null, 0, "[1]", "[]"))
                .withMessage("a text value is missing");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LinkJson.read(SEVERAL.identity(), null, 0, "[]", "[\"V1\"]"))
                .withMessage("an object is missing");
    }
}
