package org.proviso.board.ui;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.proviso.board.MotionKind;
import org.proviso.board.agenda.ReadyGroup;
import org.proviso.board.record.SessionDetails;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.core.rules.Reason;
import org.proviso.review.CaseState;

/** Envelopes that are put to the vote together, each in the version of its case that is on the screen. */
record AgendaGroup(DecisionOutcome outcome, @Nullable Reason reason, Map<EnvelopeNumber, Integer> envelopes) {

    /** The consent groups of an agenda, with what is still ready in them. */
    static List<AgendaGroup> of(SessionDetails meeting) {
        Map<Integer, AgendaGroup> groups = new TreeMap<>();
        for (SessionDetails.Item itemDetails : meeting.agenda()) {
            Integer number = itemDetails.item().group();
            DecisionOutcome proposed = itemDetails.item().proposed();
            boolean waits = itemDetails.state() == CaseState.READY
                    && !itemDetails.item().standsAlone();
            if (waits && number != null && proposed != null) {
                Reason reason = proposed == DecisionOutcome.COUNT
                        ? null
                        : itemDetails.item().primaryReason();
                groups.computeIfAbsent(number, any -> new AgendaGroup(proposed, reason, new LinkedHashMap<>()))
                        .envelopes()
                        .put(itemDetails.item().envelopeNo(), itemDetails.version());
            }
        }
        return List.copyOf(groups.values());
    }

    /** The envelopes of an agenda that are moved individually: pulled out, differing from the recommendation, or to be reopened. */
    static List<SessionDetails.Item> alone(SessionDetails meeting) {
        return meeting.agenda().stream()
                .filter(itemDetails -> itemDetails.item().standsAlone() && isBefore(itemDetails))
                .toList();
    }

    /** Ready, or decided and on the agenda to be reopened. */
    private static boolean isBefore(SessionDetails.Item itemDetails) {
        return itemDetails.state() == CaseState.READY
                || (itemDetails.state() == CaseState.DECIDED
                        && itemDetails.item().proposed() == null);
    }

    static AgendaGroup of(ReadyGroup ready) {
        return new AgendaGroup(ready.outcome(), ready.reason(), ready.envelopes());
    }

    AgendaGroup without(java.util.Set<EnvelopeNumber> leftOut) {
        Map<EnvelopeNumber, Integer> rest = new LinkedHashMap<>(envelopes);
        rest.keySet().removeAll(leftOut);
        return new AgendaGroup(outcome, reason, rest);
    }

    MotionKind kind() {
        return MotionKind.valueOf(outcome.name());
    }

    List<Reason> reasons() {
        return reason == null ? List.of() : List.of(reason);
    }

    List<EnvelopeNumber> numbers() {
        return new ArrayList<>(envelopes.keySet());
    }
}
