package org.proviso.canvass;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.proviso.core.CourtOrder;
import org.proviso.core.Election;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.Transmittal;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.intake.CastEnvelope;
import org.proviso.review.CaseState;
import org.proviso.review.Decision;
import org.proviso.review.EnvelopeCase;

/**
 * Counts the envelopes of one group of hours by place, from what each room says of them: the envelopes themselves, the
 * states of their cases, the decisions that stand. Each is counted by itself, so that they can differ.
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
    private final Map<EnvelopeNumber, String> placeOf = new HashMap<>();

    /** The envelopes of these hours. */
    void envelopes(List<CastEnvelope> envelopes) {
        for (CastEnvelope envelope : envelopes) {
            String place = CanvassPlace.nameOf(envelope);
            placeOf.put(envelope.envelopeNo(), place);
            tally.atLeastZero(place, OF_EVERY_PLACE);
            tally.add(place, Figure.RECEIVED, 1);
            if (!envelope.issueReasons().isEmpty()) {
                tally.add(place, Figure.BY_ISSUE_REASON, 1);
            }
        }
    }

    void cases(List<EnvelopeCase> cases, Map<EnvelopeNumber, Decision> decisions, Election election) {
        for (EnvelopeCase envelopeCase : cases) {
            EnvelopeNumber number = envelopeCase.key().envelopeNo();
            String place = placeOf.get(number);
            if (place != null) {
                tally.add(place, Figure.BY_STATE, 1);
                Figure outcome = outcome(envelopeCase, decisions.get(number));
                tally.add(place, outcome, 1);
                if (outcome == Figure.PENDING && isHeld(number, election)) {
                    tally.add(place, Figure.HELD_BY_LAW, 1);
                }
            }
        }
        decisions.forEach((number, decision) -> {
            if (placeOf.containsKey(number)
                    && decision.as() == DecisionOutcome.REJECT
                    && !decision.reasons().isEmpty()) {
                tally.add(placeOf.get(number), Figure.BY_REJECTION_REASON, 1);
            }
        });
    }

    private static Figure outcome(EnvelopeCase envelopeCase, @Nullable Decision decision) {
        boolean settled = envelopeCase.state() == CaseState.DECIDED || envelopeCase.state() == CaseState.RELEASED;
        if (settled && decision != null) {
            return switch (decision.as()) {
                case COUNT -> Figure.COUNTED;
                case COUNT_IN_PART -> Figure.COUNTED_IN_PART;
                case REJECT -> Figure.REJECTED;
            };
        }
        return switch (envelopeCase.state()) {
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
