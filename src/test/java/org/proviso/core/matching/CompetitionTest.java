package org.proviso.core.matching;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.proviso.core.Address;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.PersonName;

class CompetitionTest {

    private static final LocalDate SENIOR = LocalDate.of(1950, 6, 2);
    private static final LocalDate JUNIOR = LocalDate.of(1979, 11, 30);

    private final Matcher matcher = new Matcher(SmallRoll.with(
            SmallRoll.entry("V2", "Thackeray", "Owen", "", "", SENIOR, "88", "1111"),
            SmallRoll.entry("V3", "Thackeray", "Owen", "", "", JUNIOR, "88", "2222")));

    @Test
    void an_open_envelope_leans_to_the_voter_whom_no_other_envelope_holds() {
        MatchQuery open = query("E1", null, "");
        MatchQuery certain = query("E2", SENIOR, "1111");
        assertThat(SmallRoll.match(matcher, open).verdict()).isEqualTo(MatchVerdict.AMBIGUOUS);
        Match weighed = matcher.matchAll(List.of(open, certain), 1).get(0);
        assertThat(weighed.best().orElseThrow().voterId().value()).isEqualTo("V3");
        assertThat(weighed.verdict()).isNotEqualTo(MatchVerdict.SURE);
    }

    @Test
    void two_envelopes_of_one_voter_are_both_left_to_that_voter() {
        List<Match> matches = matcher.matchAll(List.of(query("E1", SENIOR, "1111"), query("E2", SENIOR, "1111")), 1);
        assertThat(matches).allSatisfy(match -> {
            assertThat(match.best().orElseThrow().voterId().value()).isEqualTo("V2");
            assertThat(match.verdict()).isEqualTo(MatchVerdict.SURE);
        });
    }

    private static MatchQuery query(String number, LocalDate born, String last4) {
        return new MatchQuery(
                new EnvelopeNumber(number),
                new PersonName("Thackeray", "Owen", "", ""),
                "",
                born,
                new Address("88 N Quarry St", "", "Millbrook", "49871"),
                Address.NONE,
                last4,
                "");
    }
}
