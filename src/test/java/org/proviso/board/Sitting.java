package org.proviso.board;

import static org.proviso.board.CasesReady.as;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.proviso.board.agenda.AgendaService;
import org.proviso.board.motion.CastVote;
import org.proviso.board.motion.MotionService;
import org.proviso.board.motion.VoteClosed;
import org.proviso.core.Code;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.ActResults;
import org.proviso.core.act.Refusal;
import org.proviso.core.deciding.Vote;
import org.proviso.core.rules.Reason;

/** A session of a test with its members; the first of them keeps the record. */
public record Sitting(CasesReady cases, SessionKey key, List<String> members) {

    public static Sitting of(CasesReady cases, String... members) {
        return of(cases, BodyKind.BOARD, members);
    }

    static Sitting of(CasesReady cases, BodyKind body, String... members) {
        BoardService boards = cases.office().the(BoardService.class);
        CallSession call = new CallSession(new ElectionId(CasesReady.ID), body, CasesReady.NOON, "Room 2");
        SessionKey key = as(members[0], () -> done(boards.callSession(call))).key();
        as(members[0], () -> done(boards.open(key, 0)));
        for (String member : members) {
            as(members[0], () -> done(boards.recordArrival(key, new UserName(member))));
        }
        return new Sitting(cases, key, List.of(members));
    }

    String chair() {
        return members.get(0);
    }

    public Sitting put(Collection<EnvelopeNumber> envelopes) {
        as(chair(), () -> done(cases.office().the(AgendaService.class).addToAgenda(key, envelopes)));
        return this;
    }

    public ActResult<BoardMotion> move(MotionKind kind, List<EnvelopeNumber> envelopes, Reason... reasons) {
        String reference = kind == MotionKind.REJECT ? CasesReady.REFERENCE : "";
        return as(
                chair(),
                () -> motions()
                        .move(new MoveMotion(key, kind, seen(envelopes), Set.of(), List.of(reasons), reference, "")));
    }

    public ActResult<BoardMotion> move(MotionKind kind, EnvelopeNumber envelope, String because) {
        return moveOn(kind, envelope, "", because);
    }

    /** On a place in the law, as it takes to count against the rules' answer. */
    public ActResult<BoardMotion> moveOn(MotionKind kind, EnvelopeNumber envelope, String reference, String because) {
        return as(
                chair(),
                () -> motions()
                        .move(new MoveMotion(
                                key, kind, seen(List.of(envelope)), Set.of(), List.of(), reference, because)));
    }

    private Map<EnvelopeNumber, Integer> seen(List<EnvelopeNumber> envelopes) {
        return envelopes.stream()
                .collect(Collectors.toMap(envelope -> envelope, cases::version, (a, b) -> a, LinkedHashMap::new));
    }

    /** Puts the motion to the vote and notes the votes of the members in their order, {@code -} for none. */
    public BoardMotion voted(ActResult<BoardMotion> moved, String votes) {
        BoardMotion motion = done(moved);
        as(chair(), () -> done(motions().putToVote(motion.key(), motion.version())));
        List<String> words = Arrays.asList(votes.split(" "));
        for (int i = 0; i < words.size(); i++) {
            note(motion.key(), members.get(i), words.get(i));
        }
        return motion(motion.key());
    }

    public void note(MotionKey motion, String member, String word) {
        Code.find(Vote.class, word)
                .ifPresent(vote ->
                        as(chair(), () -> done(motions().vote(new CastVote(motion, new UserName(member), vote)))));
    }

    public ActResult<VoteClosed> close(BoardMotion motion) {
        return as(chair(), () -> motions().close(motion.key(), motion.version()));
    }

    /** Moves, votes and closes. */
    public ActResult<VoteClosed> closed(ActResult<BoardMotion> moved, String votes) {
        return close(voted(moved, votes));
    }

    public BoardMotion motion(MotionKey motion) {
        return as(chair(), () -> motions().motions(key)).get(motion.motionNo() - 1);
    }

    public MotionService motions() {
        return cases.office().the(MotionService.class);
    }

    public static <T> T done(ActResult<T> step) {
        return ActResults.accepted(step);
    }

    public static VoteClosed.Settled settled(ActResult<VoteClosed> closed) {
        return (VoteClosed.Settled) done(closed);
    }

    public static VoteClosed.StaysOpen staysOpen(ActResult<VoteClosed> closed) {
        return (VoteClosed.StaysOpen) done(closed);
    }

    public static VoteClosed.WaitsForOtherBody waits(ActResult<VoteClosed> closed) {
        return (VoteClosed.WaitsForOtherBody) done(closed);
    }

    /** The codes of all refusals, those of an envelope after its number. */
    public static String refused(ActResult<?> step) {
        if (!step.isRefused()) {
            throw new AssertionError("not refused: " + step);
        }
        Map<String, List<String>> codes = new LinkedHashMap<>();
        step.refusals()
                .forEach(refusal -> codes.computeIfAbsent(number(refusal), any -> new ArrayList<>())
                        .add(refusal.why().code()));
        return codes.entrySet().stream()
                .map(entry -> entry.getKey() + String.join(", ", entry.getValue()))
                .collect(Collectors.joining(", "));
    }

    private static String number(Refusal refusal) {
        return refusal.about() == null ? "" : refusal.about() + " ";
    }
}
