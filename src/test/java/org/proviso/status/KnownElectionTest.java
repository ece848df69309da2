package org.proviso.status;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.proviso.core.Election;
import org.proviso.core.ElectionId;
import org.proviso.core.rules.DeadlineBook;
import org.proviso.core.rules.PackResolver;
import org.proviso.core.rules.Reason;
import org.proviso.core.rules.RulePack;
import org.proviso.files.packs.RulePacks;

/** In whose words a voter reads a reason. */
class KnownElectionTest {

    private static final LocalDate DAY = LocalDate.of(2026, 11, 3);
    private static final String OWN = "You registered too late for this election.";

    private static Map<Reason, OwnReason> reasons(RulePack pack) {
        DeadlineBook book = DeadlineBook.of(PackResolver.resolve(pack, DAY, List.of()), Set.of());
        return LookupElection.of(election(), book, RulePacks.load("us"), List.of())
                .reasons();
    }

    private static Election election() {
        return new Election(
                new ElectionId("small"),
                "Small Election",
                DAY,
                Election.Kind.GENERAL,
                "own",
                ZoneId.of("America/Chicago"),
                "example",
                new Election.DecidingBody(3, 2),
                new Election.Office("Small County Elections", "1 Court Sq", "555-0100", "", Map.of()),
                LocalTime.of(19, 0),
                List.of("en"),
                List.of(),
                Set.of(),
                List.of(),
                Election.Receipts.OWN);
    }

    @Test
    void a_sentence_of_the_federal_floor_is_the_usual_one_under_a_state_pack() {
        assertThat(reasons(RulePacks.load("us-oh")).values())
                .hasSize(Reason.values().length)
                .allMatch(OwnReason::usual);
    }

    @Test
    void a_packs_own_sentence_is_not() {
        RulePack own = RulePacks.read("own", """
                pack: own
                name: Own words
                over: us
                caution: Own words.
                rules: {}
                reasons:
                  registered_late:
                    survey: not_registered
                    notice: "%s"
                """.formatted(OWN));
        assertThat(reasons(own).get(Reason.REGISTERED_LATE))
                .isEqualTo(new OwnReason(Reason.REGISTERED_LATE, OWN, false));
        assertThat(reasons(own).get(Reason.NOT_REGISTERED).usual()).isTrue();
    }
}
