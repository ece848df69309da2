package org.proviso.board.motion;

import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.proviso.board.MotionKind;
import org.proviso.board.MoveMotion;
import org.proviso.board.SessionKey;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.rules.Reason;

/**
 * An official's decision on one envelope, or on a consent group, each in the version of its case that was seen; the
 * rest as in {@link MoveMotion}.
 */
public record DecideAsOfficial(
        @NotNull ElectionId electionId,
        @NotNull MotionKind kind,
        @NotEmpty Map<EnvelopeNumber, Integer> envelopes,
        @NotNull Set<String> contests,
        @NotNull List<Reason> reasons,
        @NotNull @Size(max = 1000) String legalReference,
        @NotNull @Size(max = 2000) String because) {

    MoveMotion in(SessionKey session) {
        return new MoveMotion(session, kind, envelopes, contests, reasons, legalReference, because);
    }
}
