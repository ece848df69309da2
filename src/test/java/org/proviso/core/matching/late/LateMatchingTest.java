package org.proviso.core.matching.late;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.proviso.core.Address;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.PersonName;
import org.proviso.core.VoterId;
import org.proviso.core.matching.Match;
import org.proviso.core.matching.MatchQuery;
import org.proviso.core.matching.MatchVerdict;
import org.proviso.core.matching.Matcher;
import org.proviso.core.matching.SmallRoll;
import org.proviso.core.matching.index.RollChange;
import org.proviso.core.matching.index.RollEntry;
import org.proviso.core.matching.index.RollIndex;
import org.proviso.core.matching.index.RollUpdate;

/** Owen Thackeray and his father at one address: one envelope is surely the father's, the other says no date. */
class LateMatchingTest {

    private static final LocalDate FATHER = LocalDate.of(1950, 6, 2);
    private static final LocalDate SON = LocalDate.of(1979, 11, 30);
    private static final RollEntry OLDER = SmallRoll.entry("V2", "Thackeray", "Owen", "", "", FATHER, "88", "1111");
    private static final RollEntry YOUNGER = SmallRoll.entry("V3", "Thackeray", "Owen", "", "", SON, "88", "2222");

    private final RollIndex index = SmallRoll.with(OLDER, YOUNGER);

    @Test
    void an_envelope_matched_anew_is_weighed_against_one_that_is_not() {
        MatchQuery open = query("E1", "", null, "88 N Quarry St", "500 N Quarry St", "");
        MatchQuery certain = query("E2", "", FATHER, "88 N Quarry St", "", "1111");
        RollEntry stranger = SmallRoll.entry("W1", "Ferris", "Abel", "", "", SON, "500", "3333");
        List<Match> again = after(stranger, List.of(open, certain));
        assertThat(again).singleElement().satisfies(match -> {
            assertThat(match.envelopeNo().value()).isEqualTo("E1");
            assertThat(match.best().orElseThrow().voterId().value()).isEqualTo("V3");
        });
    }

    @Test
    void an_envelope_that_stood_back_for_another_is_weighed_anew_when_the_other_becomes_doubtful() {
        MatchQuery open = query("E1", "", null, "88 N Quarry St", "", "");
        MatchQuery certain = query("E2", "Bell", FATHER, "901 N Quarry St", "", "1111");
        assertThat(new Matcher(index).matchAll(List.of(open, certain), 1))
                .extracting(match -> match.best().orElseThrow().voterId())
                .containsExactly(new VoterId("V3"), new VoterId("V2"));
        RollEntry namesake = SmallRoll.entry("W2", "Bell", "Owen", "", "", FATHER, "901", "1111");
        List<Match> again = after(namesake, List.of(open, certain));
        assertThat(again)
                .extracting(Match::envelopeNo)
                .containsExactly(new EnvelopeNumber("E1"), new EnvelopeNumber("E2"));
        assertThat(again.get(1).best().orElseThrow().probability())
                .as("no longer certain")
                .isLessThan(0.99);
        assertThat(again.get(0)).isEqualTo(SmallRoll.match(updated(namesake), open));
    }

    @Test
    void a_voter_who_came_concerns_nobody_else() {
        RollEntry stranger = SmallRoll.entry("W1", "Ferris", "Abel", "", "", SON, "501", "3333");
        assertThat(after(stranger, List.of(query("E1", "", null, "88 N Quarry St", "", ""))))
                .isEmpty();
    }

    private List<Match> after(RollEntry came, List<MatchQuery> envelopes) {
        NearVoters near = new NearVoters();
        near.add(came);
        Map<VoterId, RollEntry> records =
                Map.of(new VoterId("V2"), OLDER, new VoterId("V3"), YOUNGER, came.voterId(), came);
        return new LateMatching(
                        updated(came),
                        envelopes,
                        claims(envelopes),
                        ids -> ids.stream().map(records::get).toList(),
                        1)
                .near(near);
    }

    /** As the office has them where each envelope was keyed and matched by itself. */
    private Map<EnvelopeNumber, VoterId> claims(List<MatchQuery> envelopes) {
        Map<EnvelopeNumber, VoterId> claims = new HashMap<>();
        for (MatchQuery envelope : envelopes) {
            Match match = SmallRoll.match(new Matcher(index), envelope);
            if (match.verdict() == MatchVerdict.SURE || match.verdict() == MatchVerdict.LIKELY) {
                claims.put(match.envelopeNo(), match.best().orElseThrow().voterId());
            }
        }
        return claims;
    }

    private Matcher updated(RollEntry came) {
        RollUpdate update = new RollUpdate();
        update.add(new RollChange(null, came));
        return new Matcher(update.over(index));
    }

    private static MatchQuery query(
            String number, String formerName, LocalDate born, String home, String former, String last4) {
        return new MatchQuery(
                new EnvelopeNumber(number),
                new PersonName("Thackeray", "Owen", "", ""),
                formerName,
                born,
                new Address(home, "", "Millbrook", "49871"),
                new Address(former, "", "", ""),
                last4,
                "");
    }
}
