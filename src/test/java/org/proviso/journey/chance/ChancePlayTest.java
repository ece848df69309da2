package org.proviso.journey.chance;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.proviso.database.OnADatabase;
import org.proviso.database.TestOffice;

/**
 * Canvasses played by chance hold what must hold after every act, and can be closed. {@code proviso.chance.plays} and
 * {@code proviso.chance.seed} say how many and from which seed on; {@link ChancePlay} plays for minutes.
 */
class ChancePlayTest {

    private static final int PLAYS = Integer.getInteger("proviso.chance.plays", 1);
    private static final long SEED = Long.getLong("proviso.chance.seed", 1);
    private static final int MOVES = 160;
    private static final int SHRINKING_SECONDS = 60;

    @TempDir
    private Path temporary;

    @OnADatabase
    void a_canvass_played_by_chance_holds_what_must_hold_and_is_closed(TestOffice office) {
        SmallElection election = SmallElection.in(temporary);
        for (long seed = SEED; seed < SEED + PLAYS; seed++) {
            List<Play.Move> moves = Play.moves(seed, MOVES);
            Play.Result result = Play.of(office, election, moves);
            if (result.wrong() != null) {
                throw new AssertionError(Fewest.of(office, election, moves, result, SHRINKING_SECONDS)
                        .told(seed));
            }
            assertThat(result.counts().keySet())
                    .as("of every way in which an attempt can end there is one: %s", result.counts())
                    .contains(Play.Ended.ACCEPTED, Play.Ended.REFUSED);
        }
    }

    @OnADatabase
    void what_must_hold_is_looked_at(TestOffice services) {
        ChanceOffice office = ChanceOffice.opened(services, SmallElection.in(temporary));
        Invariants invariants = new Invariants(office);
        assertThat(invariants.afterAct(false, false)).isEmpty();
        assertThat(invariants.afterAct(true, true)).containsExactly("the act has no entry in the ledger");
        office.figures().received(1);
        assertThat(invariants.afterAct(false, false))
                .anyMatch(words -> words.startsWith("received: the office has "))
                .hasSize(2);
        office.figures().received(-1);
        services.jdbc()
                .sql("update envelope_case set state = 'ready' where envelope_no = ?")
                .param(office.cases().get(0).key().envelopeNo().value())
                .update();
        assertThat(invariants.afterAct(false, false))
                .singleElement()
                .asString()
                .endsWith("is ready without a proposal");
        assertThat(invariants.whole()).anyMatch(words -> words.startsWith("replay: "));
    }
}
