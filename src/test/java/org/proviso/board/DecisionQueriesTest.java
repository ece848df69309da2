package org.proviso.board;

import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.board.CasesReady.REFERENCE;
import static org.proviso.board.CasesReady.as;
import static org.proviso.board.Sitting.done;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.proviso.board.agenda.AgendaService;
import org.proviso.board.motion.VoteClosed;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.act.ActResult;
import org.proviso.core.rules.Reason;
import org.proviso.database.CopiedEnvelopes;
import org.proviso.database.DatabaseKind;
import org.proviso.database.Statements;
import org.proviso.database.TestOffice;

/**
 * What a board sends to the database to reject many envelopes together: what it reads, and all that the decision writes,
 * is sent once for all of them.
 */
class DecisionQueriesTest {

    private static final EnvelopeNumber LATE = new EnvelopeNumber("P-1050");
    private static final int FEW = 25;
    private static final int MANY = 100;

    /** Each case is locked, in the order of the cases; each of the rooms that hear of it looks at what it has of it. */
    private static final Set<String> ONCE_FOR_EACH = Set.of(
            "select * from envelope_case for update",
            "update envelope_case set queue_at",
            "select n.*, n.notice_no as number from notice",
            "select zone from election",
            "insert into notice",
            "select * from status_line",
            "delete from status_line",
            "insert into status_line");

    /** What one motion sent from step to step. */
    private record Sent(Statements put, Statements moved, Statements closed, Statements agenda) {}

    @Test
    void a_decision_on_many_envelopes_reads_and_writes_them_together() {
        TestOffice office = TestOffice.on(DatabaseKind.H2);
        office.empty();
        CasesReady cases = CasesReady.in(office).toReject(List.of(LATE));
        new CopiedEnvelopes(office.jdbc()).of(LATE, 1 + FEW + MANY);
        rejected(cases, 1, 1);
        Sent few = rejected(cases, 2, FEW);
        Sent many = rejected(cases, 2 + FEW, MANY);
        assertThat(many.put().moreThan(few.put())).as("put on the agenda").isEmpty();
        assertThat(many.moved().moreThan(few.moved())).as("moved").isEmpty();
        assertThat(many.agenda().moreThan(few.agenda())).as("agenda read").isEmpty();
        Map<String, Integer> more = many.closed().moreThan(few.closed());
        assertThat(more.keySet().stream().map(DecisionQueriesTest::kind))
                .as("sent for each envelope as the vote was closed")
                .containsExactlyInAnyOrderElementsOf(ONCE_FOR_EACH);
        assertThat(more.values()).as("once for each").containsOnly(MANY - FEW);
    }

    /** What a statement is to be called. */
    private static String kind(String sql) {
        return ONCE_FOR_EACH.stream()
                .filter(kind -> kind.endsWith(" for update")
                        ? sql.endsWith(" for update") && sql.startsWith(kind.replace(" for update", ""))
                        : sql.startsWith(kind) && !sql.endsWith(" for update"))
                .findFirst()
                .orElse(sql);
    }

    /** Rejects so many copies from that one on in a session of their own. */
    private static Sent rejected(CasesReady cases, int from, int number) {
        List<EnvelopeNumber> envelopes = IntStream.range(from, from + number)
                .mapToObj(copy -> new EnvelopeNumber(LATE + "+" + copy))
                .toList();
        int seen = cases.version(LATE.value());
        Sitting board = Sitting.of(cases, "eve", "fay");
        MoveMotion move = new MoveMotion(
                board.key(),
                MotionKind.REJECT,
                envelopes.stream().collect(Collectors.toMap(Function.identity(), envelope -> seen)),
                Set.of(),
                List.of(Reason.REGISTERED_LATE),
                REFERENCE,
                "They came after the deadline.");
        Statements put = Statements.of(() -> board.put(envelopes));
        Statements moved =
                Statements.of(() -> as("eve", () -> done(board.motions().move(move))));
        BoardMotion motion = board.voted(ActResult.accepted(board.motion(new MotionKey(board.key(), 1))), "yes yes");
        Statements closed =
                Statements.of(() -> assertThat(done(board.close(motion))).isInstanceOf(VoteClosed.Settled.class));
        AgendaService agendas = cases.office().the(AgendaService.class);
        Statements agenda = Statements.of(() -> as("eve", () -> agendas.agenda(board.key())));
        BoardService boards = cases.office().the(BoardService.class);
        as(
                "eve",
                () -> done(boards.close(board.key(), boards.session(board.key()).version())));
        return new Sent(put, moved, closed, agenda);
    }
}
