package org.proviso.board.ui;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.proviso.board.Meeting;
import org.proviso.board.MotionKind;
import org.proviso.board.ReadyGroup;
import org.proviso.core.deciding.DecidedAs;
import org.proviso.core.rules.Reason;
import org.proviso.review.CaseState;

/** Envelopes that are put to the vote together, each in the version of its case that is on the screen. */
record Group(DecidedAs outcome, @Nullable Reason reason, Map<String, Integer> envelopes) {

    /** The consent groups of an agenda, with what is still ready in them. */
    static List<Group> of(Meeting meeting) {
        Map<Integer, Group> groups = new TreeMap<>();
        for (Meeting.Item one : meeting.agenda()) {
            Integer number = one.item().group();
            DecidedAs proposed = one.item().proposed();
            boolean waits = one.state() == CaseState.READY && !one.item().standsAlone();
            if (waits && number != null && proposed != null) {
                Reason reason = proposed == DecidedAs.COUNT ? null : one.item().primaryReason();
                groups.computeIfAbsent(number, any -> new Group(proposed, reason, new LinkedHashMap<>()))
                        .envelopes()
                        .put(one.item().envelopeNo(), one.version());
            }
        }
        return List.copyOf(groups.values());
    }

    /** The envelopes of an agenda that are moved one by one: pulled out, departing, or there to be opened again. */
    static List<Meeting.Item> alone(Meeting meeting) {
        return meeting.agenda().stream()
                .filter(one -> one.item().standsAlone() && isBefore(one))
                .toList();
    }

    /** Ready; or decided, and put here to be opened again. */
    private static boolean isBefore(Meeting.Item one) {
        return one.state() == CaseState.READY
                || (one.state() == CaseState.DECIDED && one.item().proposed() == null);
    }

    static Group of(ReadyGroup ready) {
        return new Group(ready.outcome(), ready.reason(), ready.envelopes());
    }

    Group without(java.util.Set<String> leftOut) {
        Map<String, Integer> rest = new LinkedHashMap<>(envelopes);
        rest.keySet().removeAll(leftOut);
        return new Group(outcome, reason, rest);
    }

    MotionKind kind() {
        return MotionKind.valueOf(outcome.name());
    }

    List<Reason> reasons() {
        return reason == null ? List.of() : List.of(reason);
    }

    List<String> numbers() {
        return new ArrayList<>(envelopes.keySet());
    }
}
