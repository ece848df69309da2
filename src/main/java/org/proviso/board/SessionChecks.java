package org.proviso.board;

import java.util.Collection;
import java.util.Optional;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;

/** What stands in the way of an act in a session. */
public final class SessionChecks {

    private SessionChecks() {}

    static Optional<Refusal> notYetOpened(BoardSession session) {
        return refuse(
                session.openedAt() != null || session.closedAt() != null,
                Why.NOT_IN_THIS_STATE,
                session.isOpen() ? "The session is open already." : "The session is closed.");
    }

    public static Optional<Refusal> open(BoardSession session) {
        return notClosed(session)
                .or(() -> refuse(!session.isOpen(), Why.NOT_IN_THIS_STATE, "The session is not open yet."));
    }

    public static Optional<Refusal> notClosed(BoardSession session) {
        return refuse(session.closedAt() != null, Why.NOT_IN_THIS_STATE, "The session is closed.");
    }

    public static Optional<Refusal> present(Collection<UserName> present, UserName userName) {
        return refuse(!present.contains(userName), Why.NOT_PRESENT, "Not noted as present: " + userName + ".");
    }

    public static Optional<Refusal> onAgenda(Optional<AgendaItem> item, EnvelopeNumber envelopeNo) {
        return refuse(item.isEmpty(), Why.NOT_ON_THE_AGENDA, "Not on the agenda of this session: " + envelopeNo + ".");
    }

    public static Optional<Refusal> nothingPending(Optional<BoardMotion> pending) {
        return pending.map(motion -> Refusal.of(
                Why.MOTION_PENDING,
                "Motion " + motion.key().motionNo() + " is before the session: close its vote or withdraw it first."));
    }

    public static Optional<Refusal> refuse(boolean wrong, Why why, String words) {
        return wrong ? Optional.of(Refusal.of(why, words)) : Optional.empty();
    }
}
