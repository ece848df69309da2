package org.proviso.canvass;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.proviso.canvass.outcomes.EnvelopeGroup;
import org.proviso.core.CourtOrder;
import org.proviso.core.Election;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.Transmittal;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.review.CaseState;

/**
 * Counts the envelopes of one group of hours by place: the envelopes themselves, the states of their cases, the decisions
 * that stand. Each is counted by itself, so that they can differ.
 */
final class EnvelopeCounter {

    private static final Figure[] OF_EVERY_PLACE = {
        Figure.RECEIVED,
        Figure.COUNTED,
        Figure.COUNTED_IN_PART,
        Figure.REJECTED,
        Figure.SENT_ON,
        Figure.ENDED,
        Figure.PENDING,
        Figure.HELD_BY_LAW,
        Figure.BY_ISSUE_REASON,
        Figure.BY_STATE,
        Figure.BY_REJECTION_REASON,
        Figure.SCANNED_IN_ERROR,
        Figure.CHANGED_SEALS,
        Figure.LOOSE_BALLOTS
    };

    private final FigureSums tally = new FigureSums();

    /** The envelopes of these hours, with their cases and decisions. */
    void envelopes(List<EnvelopeGroup> groups) {
        for (EnvelopeGroup group : groups) {
            String place = CanvassPlace.nameOf(group);
            tally.atLeastZero(place, OF_EVERY_PLACE);
            tally.add(place, Figure.RECEIVED, group.number());
            if (!group.issueReasons().isEmpty()) {
                tally.add(place, Figure.BY_ISSUE_REASON, group.number());
            }
            if (group.isRejectedForAReason()) {
                tally.add(place, Figure.BY_REJECTION_REASON, group.number());
            }
            if (group.state() != null) {
                tally.add(place, Figure.BY_STATE, group.number());
                outcome(place, group, group.state());
            }
        }
    }

    private void outcome(String place, EnvelopeGroup group, CaseState state) {
        Figure outcome = outcome(state, group.outcome());
        tally.add(place, outcome, group.number());
        if (outcome == Figure.PENDING && group.held()) {
            tally.add(place, Figure.HELD_BY_LAW, group.number());
        }
    }

    private static Figure outcome(CaseState state, @Nullable DecisionOutcome decided) {
        boolean settled = state == CaseState.DECIDED || state == CaseState.RELEASED;
        if (settled && decided != null) {
            return switch (decided) {
                case COUNT -> Figure.COUNTED;
                case COUNT_IN_PART -> Figure.COUNTED_IN_PART;
                case REJECT -> Figure.REJECTED;
            };
        }
        return switch (state) {
            case SENT_ON -> Figure.SENT_ON;
            case ENDED -> Figure.ENDED;
            default -> Figure.PENDING;
        };
    }

    /** Whether a court holds the envelope: it may stay undecided at closing. */
    static boolean isHeld(EnvelopeNumber envelopeNo, Election election) {
        return election.orders().stream()
                .anyMatch(order -> order.kind() == CourtOrder.Kind.HOLD && order.binds() && order.isAbout(envelopeNo));
    }

    /** What the returns of the voting locations say; a figure that a return leaves out is not noted. */
    void transmittals(List<Transmittal> returns) {
        for (Transmittal transmittal : returns) {
            String place = transmittal.votingLocation();
            tally.atLeastZero(place, OF_EVERY_PLACE);
            tally.add(place, Figure.ISSUED, transmittal.issued());
            tally.add(place, Figure.SPOILED, transmittal.spoiled());
            tally.add(place, Figure.SENT_BACK, transmittal.returned());
            tally.add(place, Figure.SCANNED_IN_ERROR, orNone(transmittal.scannedInError()));
            if (transmittal.supplied() != null) {
                tally.add(place, Figure.SUPPLIED, transmittal.supplied());
            }
            if (transmittal.unused() != null) {
                tally.add(place, Figure.UNUSED, transmittal.unused());
            }
        }
    }

    /** Voting locations from which something is expected, whether or not anything came. */
    void expected(Collection<String> locations) {
        locations.forEach(place -> tally.atLeastZero(place, OF_EVERY_PLACE));
    }

    /** What the returns report of their bags: seals that were changed, and ballots outside an envelope. */
    void incidents(List<Transmittal> returns) {
        for (Transmittal transmittal : returns) {
            String place = transmittal.votingLocation();
            boolean changed = !transmittal.sealOut().equals(transmittal.sealIn());
            tally.add(place, Figure.CHANGED_SEALS, changed ? 1 : 0);
            tally.add(place, Figure.LOOSE_BALLOTS, orNone(transmittal.looseBallots()));
        }
    }

    /** A return leaves out what did not happen. */
    private static int orNone(@Nullable Integer number) {
        return Objects.requireNonNullElse(number, 0);
    }

    /** What a person noted takes the place of what was counted. */
    void noted(String place, Figure figure, int number) {
        tally.set(place, figure, number);
    }

    /** How many places have an envelope or a return. */
    Map<String, PlaceFigures> places() {
        return tally.counts();
    }
}
