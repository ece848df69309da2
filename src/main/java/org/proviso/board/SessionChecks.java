package org.proviso.board;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;

/** What stands in the way of an act in a session. */
public final class SessionChecks {

    private SessionChecks() {}

    static Optional<Refusal> notYetOpened(BoardSession session) {
        return Refusal.when(
                session.openedAt() != null || session.closedAt() != null,
                Why.NOT_IN_THIS_STATE,
                session.isOpen() ? "The session is open already." : "The session is closed.");
    }

    public static Optional<Refusal> open(BoardSession session) {
        return notClosed(session)
                .or(() -> Refusal.when(!session.isOpen(), Why.NOT_IN_THIS_STATE, "The session is not open yet."));
    }

    public static Optional<Refusal> notClosed(BoardSession session) {
        return Refusal.when(session.closedAt() != null, Why.NOT_IN_THIS_STATE, "The session is closed.");
    }

    static Optional<Refusal> closed(BoardSession session) {
        return Refusal.when(
                session.closedAt() == null, Why.NOT_IN_THIS_STATE, "The session is not closed: nothing to reopen.");
    }

    static Optional<Refusal> onNoOtherAgenda(List<EnvelopeNumber> onAnother) {
        return onAnother.isEmpty()
                ? Optional.empty()
                : Optional.of(Refusal.of(
                                Why.ON_ANOTHER_AGENDA,
                                "It is on the agenda of another session by now. Go on there, or close that session"
                                        + " first.")
                        .about(onAnother.get(0)));
    }

    public static Optional<Refusal> present(Collection<UserName> present, UserName userName) {
        return present.contains(userName)
                ? Optional.empty()
                : Optional.of(Refusal.naming(Why.NOT_PRESENT, Set.of(userName), "{who} is not recorded as present."));
    }

    public static Optional<Refusal> onAgenda(Optional<AgendaItem> item, EnvelopeNumber envelopeNo) {
        return Refusal.when(
                item.isEmpty(), Why.NOT_ON_THE_AGENDA, envelopeNo + " is not on the agenda of this session.");
    }

    public static Optional<Refusal> nothingPending(Optional<BoardMotion> pending) {
        return pending.map(motion -> Refusal.of(
                Why.MOTION_PENDING,
                "Motion " + motion.key().motionNo() + " is on the floor. Close its vote or withdraw it first."));
    }
}
