package org.proviso.board;

import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.board.CasesReady.COUNT;
import static org.proviso.board.CasesReady.as;
import static org.proviso.board.Sitting.done;
import static org.proviso.board.Sitting.refused;

import java.util.List;
import org.proviso.board.motion.CastVote;
import org.proviso.board.motion.MotionService;
import org.proviso.board.motion.VoteConfirmationService;
import org.proviso.board.motion.VoteConfirmationService.RecordedForYou;
import org.proviso.board.record.BoardReplay;
import org.proviso.board.record.Minutes;
import org.proviso.board.record.MinutesService;
import org.proviso.core.ElectionId;
import org.proviso.core.UserName;
import org.proviso.core.deciding.Vote;
import org.proviso.database.OnBothDatabases;
import org.proviso.database.TestOffice;

/** A member without a device says a vote aloud; another records it, and the member confirms it on the minutes. */
class VoteConfirmationTest {

    private static BoardMotion voted(TestOffice office, Sitting board) {
        BoardMotion motion = done(board.move(MotionKind.COUNT, COUNT));
        MotionService motions = office.the(MotionService.class);
        as("eve", () -> done(motions.putToVote(motion.key(), motion.version())));
        for (String member : List.of("eve", "fay")) {
            as("eve", () -> done(motions.vote(new CastVote(motion.key(), new UserName(member), Vote.YES))));
        }
        return motion;
    }

    private static void close(TestOffice office, BoardMotion motion) {
        MotionService motions = office.the(MotionService.class);
        int version = as("eve", () -> motions.motions(motion.key().session())).stream()
                .filter(found -> found.key().equals(motion.key()))
                .findFirst()
                .orElseThrow()
                .version();
        as("eve", () -> done(motions.close(motion.key(), version)));
    }

    private static List<Minutes.VoteEntry> votes(TestOffice office, SessionKey session) {
        return as("eve", () -> office.the(MinutesService.class).minutes(session))
                .motions()
                .get(0)
                .votes();
    }

    @OnBothDatabases
    void the_member_confirms_a_vote_that_another_recorded_once_it_is_closed(TestOffice office) {
        CasesReady cases = CasesReady.in(office).toCount(COUNT);
        Sitting board = Sitting.of(cases, "eve", "fay").put(COUNT);
        BoardMotion motion = voted(office, board);
        VoteConfirmationService confirmations = office.the(VoteConfirmationService.class);
        assertThat(as("fay", () -> confirmations.waiting(board.key())))
                .as("still open")
                .isEmpty();
        assertThat(refused(as("fay", () -> confirmations.confirm(motion.key(), true))))
                .isEqualTo("not_in_this_state");
        close(office, motion);
        assertThat(as("fay", () -> confirmations.waiting(board.key())))
                .containsExactly(new RecordedForYou(motion.key(), Vote.YES, "eve"));
        assertThat(as("eve", () -> confirmations.waiting(board.key())))
                .as("her own hand")
                .isEmpty();
        assertThat(refused(as("eve", () -> confirmations.confirm(motion.key(), true))))
                .isEqualTo("not_in_this_state");
        as("fay", () -> done(confirmations.confirm(motion.key(), true)));
        assertThat(refused(as("fay", () -> confirmations.confirm(motion.key(), false))))
                .isEqualTo("nothing_new");
        assertThat(votes(office, board.key()))
                .containsExactlyInAnyOrder(
                        new Minutes.VoteEntry("eve", Vote.YES, "", null),
                        new Minutes.VoteEntry("fay", Vote.YES, "eve", true));
        assertThat(office.the(BoardReplay.class)
                        .replay(new ElectionId(CasesReady.ID))
                        .isWhole())
                .isTrue();
    }

    @OnBothDatabases
    void a_vote_that_was_not_the_members_stands_on_the_minutes_as_disputed(TestOffice office) {
        CasesReady cases = CasesReady.in(office).toCount(COUNT);
        Sitting board = Sitting.of(cases, "eve", "fay").put(COUNT);
        BoardMotion motion = voted(office, board);
        close(office, motion);
        as("fay", () -> done(office.the(VoteConfirmationService.class).confirm(motion.key(), false)));
        assertThat(votes(office, board.key())).contains(new Minutes.VoteEntry("fay", Vote.YES, "eve", false));
        assertThat(as("fay", () -> office.the(VoteConfirmationService.class).waiting(board.key())))
                .isEmpty();
        office.jdbc()
                .sql("update vote set confirmed = true where confirmed = false")
                .update();
        assertThat(office.the(BoardReplay.class)
                        .replay(new ElectionId(CasesReady.ID))
                        .isWhole())
                .as("what the member said is in the ledger")
                .isFalse();
    }
}
