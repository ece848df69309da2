package org.proviso.review.facts;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.proviso.access.Staff;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.VoterId;
import org.proviso.core.adjudication.facts.VoterIdentityFact;
import org.proviso.core.adjudication.finding.Link;
import org.proviso.core.matching.Candidate;
import org.proviso.database.OnBothDatabases;
import org.proviso.database.TestOffice;
import org.proviso.review.AssessedPrimary;

/** Links come back from their table as they went in, whatever is written in their sentences. */
class LinkStoreTest {

    @AfterEach
    void signOut() {
        Staff.signOut();
    }

    @OnBothDatabases
    void links_of_a_load_and_newer_ones_come_back_as_they_are(TestOffice office) {
        AssessedPrimary primary = AssessedPrimary.load(office);
        LinkStore links = office.the(LinkStore.class);
        assertThat(links.all(new ElectionId(AssessedPrimary.ID)))
                .isEqualTo(primary.cases().links());
        EnvelopeKey key = AssessedPrimary.key(new EnvelopeNumber("P-1007"));
        Link newer = new Link(
                VoterIdentityFact.SEVERAL_FIT,
                null,
                1.0 / 3,
                List.of("Two\nlines with a\ttab.", ""),
                List.of(
                        new Candidate(new VoterId("V-1"), 0.1, List.of("", "\n")),
                        new Candidate(new VoterId("V-2"), 1e-300, List.of())));
        links.insert(key, newer, 1, null, "");
        assertThat(links.newest(key)).contains(newer);
    }
}
