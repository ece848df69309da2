package org.proviso.board.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.proviso.board.CasesReady.COUNT;
import static org.proviso.board.CasesReady.as;
import static org.proviso.board.Sitting.done;

import java.util.List;
import org.proviso.access.NotPermittedException;
import org.proviso.access.Staff;
import org.proviso.board.CasesReady;
import org.proviso.board.MotionKind;
import org.proviso.board.Sitting;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.database.OnADatabase;
import org.proviso.database.TestOffice;
import org.proviso.intake.IntakeService;

/** What the display in the room shows, to whom, and whose names it never has. */
class PublicDisplayServiceTest {

    private static PublicDisplay shown(TestOffice office, Sitting board) {
        String token = as("eve", () -> office.the(PublicDisplayService.class).link(board.key()));
        Staff.signOut();
        return office.the(PublicDisplayService.class).show(token).orElseThrow();
    }

    @OnADatabase
    void votes_are_told_once_the_vote_is_closed_and_not_before(TestOffice office) {
        CasesReady cases = CasesReady.in(office).toCount(COUNT);
        Sitting board = Sitting.of(cases, "eve", "fay", "gil").put(COUNT);
        board.closed(
                board.move(MotionKind.COUNT, List.of(new EnvelopeNumber("P-1012"), new EnvelopeNumber("P-1042"))),
                "yes no yes");
        done(board.move(MotionKind.TABLE, new EnvelopeNumber("P-1049"), "The voter comes tomorrow."));
        PublicDisplay view = shown(office, board);
        assertThat(view.hasQuorum()).isTrue();
        assertThat(view.results()).singleElement().satisfies(motion -> {
            assertThat(motion.yes()).isEqualTo(2);
            assertThat(motion.no()).isOne();
            assertThat(motion.envelopes()).containsExactly(new EnvelopeNumber("P-1012"), new EnvelopeNumber("P-1042"));
            assertThat(motion.result()).isNotEmpty();
        });
        assertThat(view.onTheFloor()).singleElement().satisfies(motion -> {
            assertThat(motion.kind()).isEqualTo(MotionKind.TABLE);
            assertThat(motion.yes() + motion.no() + motion.aside()).isZero();
            assertThat(motion.result()).isEmpty();
        });
        assertThat(view.agenda()).flatExtracting(PublicDisplay.Group::envelopes).containsAll(COUNT);
    }

    @OnADatabase
    void what_is_next_is_neither_done_nor_on_the_floor(TestOffice office) {
        CasesReady cases = CasesReady.in(office).toCount(COUNT);
        Sitting board = Sitting.of(cases, "eve", "fay", "gil").put(COUNT);
        assertThat(shown(office, board).next())
                .flatExtracting(PublicDisplay.Group::envelopes)
                .containsExactlyInAnyOrderElementsOf(COUNT);
        board.closed(board.move(MotionKind.COUNT, List.of(COUNT.get(0))), "yes yes yes");
        done(board.move(MotionKind.TABLE, COUNT.get(1), "The voter comes tomorrow."));
        assertThat(shown(office, board).next())
                .flatExtracting(PublicDisplay.Group::envelopes)
                .containsExactlyInAnyOrderElementsOf(COUNT.subList(2, COUNT.size()));
        assertThat(shown(office, board).results()).hasSize(1);
    }

    @OnADatabase
    void nobodys_name_and_nothing_written_is_shown(TestOffice office) {
        CasesReady cases = CasesReady.in(office).toCount(COUNT);
        Sitting board = Sitting.of(cases, "eve", "fay", "gil").put(COUNT);
        done(board.move(MotionKind.TABLE, new EnvelopeNumber("P-1049"), "The voter comes tomorrow."));
        String all = shown(office, board).toString();
        assertThat(all).contains("P-1049").doesNotContain("comes tomorrow", "eve", "fay", "gil");
        for (EnvelopeNumber envelopeNo : COUNT) {
            String name = as(
                    "hugh",
                    () -> office.the(IntakeService.class)
                            .envelope(new ElectionId(CasesReady.ID), envelopeNo)
                            .orElseThrow()
                            .affirmation()
                            .name()
                            .last());
            assertThat(all).doesNotContain(name);
        }
    }

    @OnADatabase
    void a_link_is_made_by_a_decider_or_a_supervisor_and_nothing_else_opens_the_display(TestOffice office) {
        CasesReady cases = CasesReady.in(office).toCount(COUNT);
        Sitting board = Sitting.of(cases, "eve", "fay", "gil");
        PublicDisplayService rooms = office.the(PublicDisplayService.class);
        String token = as("eve", () -> rooms.link(board.key()));
        assertThat(token).hasSizeGreaterThanOrEqualTo(24);
        assertThat(as("eve", () -> rooms.link(board.key()))).isEqualTo(token);
        Staff.signOut();
        assertThatThrownBy(() -> rooms.link(board.key())).isInstanceOf(NotPermittedException.class);
        assertThat(rooms.show(token.substring(1))).isEmpty();
        assertThat(rooms.show("")).isEmpty();
    }
}
