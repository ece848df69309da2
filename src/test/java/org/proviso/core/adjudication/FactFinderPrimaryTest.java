package org.proviso.core.adjudication;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.proviso.core.PrecinctPart;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.rules.Rules;

/** A primary with a Red and a Blue ballot in precinct 1. */
class FactFinderPrimaryTest {

    private final SmallCase small = new SmallCase();

    @BeforeEach
    void a_primary() {
        small.records.election = SmallElection.PRIMARY;
        small.records.rows.set(0, new PrecinctPart("1", "", "A-RED", "Red", "Library"));
        small.records.rows.add(new PrecinctPart("1", "", "A-BLUE", "Blue", "Library"));
        small.records.style("A-RED", "Red", "GOV-RED");
        small.records.style("A-BLUE", "Blue", "GOV-BLUE");
        small.envelope.style = "A-RED";
    }

    @ParameterizedTest
    @CsvSource({
        "own_party, Red, own",
        "own_party, Blue, other",
        "own_party, '', other",
        "own_party_or_unaffiliated, '', own",
        "own_party_or_unaffiliated, Blue, other",
        "every_voter, Blue, own"
    })
    void weighs_the_party_ballot_by_the_rule_of_the_state(String rule, String party, String word) {
        small.pack.word(Rules.PRIMARY, rule);
        small.voter.party = party;
        assertThat(small.word(Fact.PARTY_BALLOT)).isEqualTo(word);
        assertThat(small.evidence(Fact.PARTY_BALLOT))
                .startsWith("A Red ballot was cast; the roll lists the voter "
                        + (party.isEmpty() ? "with no party" : "as " + party));
    }

    @ParameterizedTest
    @CsvSource({"Red, own", "Blue, unknown", "'', unknown"})
    void leaves_the_ballot_of_another_party_to_a_person_where_the_parties_decide(String party, String word) {
        small.pack.word(Rules.PRIMARY, "parties_decide");
        small.voter.party = party;
        assertThat(small.word(Fact.PARTY_BALLOT)).isEqualTo(word);
        assertThat(small.evidence(Fact.PARTY_BALLOT).endsWith("a reviewer must check."))
                .isEqualTo(word.equals("unknown"));
    }

    @Test
    void calls_no_party_ballot_wrong_by_a_remembered_rule() {
        small.voter.party = "Blue";
        small.pack.fromMemory(Rules.PRIMARY);
        assertThat(small.word(Fact.PARTY_BALLOT)).isEqualTo("unknown");
        small.voter.party = "Red";
        assertThat(small.word(Fact.PARTY_BALLOT)).isEqualTo("own");
    }

    @Test
    void takes_the_right_style_from_the_row_of_the_party_ballot() {
        small.voter.party = "Red";
        assertThat(small.word(Fact.BALLOT)).isEqualTo("right_style");
        small.envelope.partyBallot = "Blue";
        assertThat(small.word(Fact.BALLOT)).isEqualTo("other_style");
    }

    @Test
    void takes_every_row_where_none_is_for_the_party_cast() {
        small.records.style("A-GREEN", "Green", "GOV-GREEN");
        small.envelope.style = "A-GREEN";
        assertThat(small.word(Fact.BALLOT)).isEqualTo("other_style");
        assertThat(small.evidence(Fact.BALLOT)).contains("style A-RED or A-BLUE");
    }

    @Test
    void asks_of_no_party_in_a_general_election_or_with_a_ballot_for_all() {
        small.records.style("A-RED", "", "GOV");
        assertThat(small.word(Fact.PARTY_BALLOT)).isEqualTo("none");
        small.records.style("A-RED", "Red", "GOV-RED");
        small.records.election = SmallElection.GENERAL;
        assertThat(small.word(Fact.PARTY_BALLOT)).isEqualTo("none");
    }

    @Test
    void knows_no_party_of_nobody() {
        small.noVoter();
        assertThat(small.word(Fact.PARTY_BALLOT)).isEqualTo("unknown");
        small.envelope.style = "Z";
        small.envelope.partyBallot = "Red";
        assertThat(small.word(Fact.PARTY_BALLOT)).isEqualTo("unknown");
        assertThat(small.word(Fact.BALLOT)).isEqualTo("unknown");
    }
}
