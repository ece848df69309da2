package org.proviso.canvass;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.proviso.canvass.outcomes.EnvelopeGroup;
import org.proviso.canvass.steps.ClosingLine;
import org.proviso.canvass.steps.ClosingStep;
import org.proviso.release.Batch;
import org.proviso.release.RemakeSheet;
import org.proviso.review.CaseState;
import org.proviso.review.decide.ContradictedDecision;

/** The work behind identities that do not hold: each of them is explained by a line of work, or is a line itself. */
final class ClosingWork {

    private static final Map<CaseState, ClosingStep> UNDECIDED = Map.of(
            CaseState.RECEIVED, ClosingStep.KEY,
            CaseState.OPEN, ClosingStep.REVIEW,
            CaseState.IN_REVIEW, ClosingStep.FINISH_REVIEW,
            CaseState.PROPOSED, ClosingStep.SECOND_REVIEW,
            CaseState.READY, ClosingStep.DECIDE);

    private static final Set<BalanceRule> OPENING = EnumSet.of(BalanceRule.BALLOTS, BalanceRule.REMAKES);

    /** What a voting location's return tells. */
    private static final Set<Figure> OF_A_RETURN =
            EnumSet.of(Figure.SUPPLIED, Figure.ISSUED, Figure.SPOILED, Figure.UNUSED, Figure.SENT_BACK);

    private final List<BalanceResult> open;
    private final Map<ClosingStep, Integer> numbers = new EnumMap<>(ClosingStep.class);
    private final Map<ClosingStep, Set<String>> which = new EnumMap<>(ClosingStep.class);
    private final Set<CanvassPlace> undecidedAt = new HashSet<>();
    private final Set<BalanceResult> waiting = new HashSet<>();

    ClosingWork(List<BalanceResult> open) {
        this.open = open;
    }

    /** Envelopes that are not decided, and that no court holds. */
    void undecided(CaseState state, EnvelopeGroup envelopes) {
        if (!isOpen(EnumSet.of(BalanceRule.NOTHING_PENDING))) {
            return;
        }
        add(Objects.requireNonNull(UNDECIDED.get(state), "a state that is not over has its work"), envelopes.number());
        VotingHours hours = envelopes.castExtended() ? VotingHours.EXTENDED : VotingHours.REGULAR;
        undecidedAt.add(CanvassPlace.county(hours));
        undecidedAt.add(CanvassPlace.location(CanvassPlace.nameOf(envelopes), hours));
    }

    /** What has to be recorded before any envelope that is ready may be decided. */
    void beforeDeciding(String words) {
        if (numbers.containsKey(ClosingStep.DECIDE)) {
            name(ClosingStep.OTHER_BALLOTS, words);
        }
    }

    /** Work of those who open. */
    void opening(ClosingStep step, int number, List<String> words) {
        if (isOpen(OPENING) && number > 0) {
            add(step, number);
            words.forEach(sentence -> name(step, sentence));
        }
    }

    /** What is to be done in each batch; nothing where a batch was dissolved or has nothing left in it. */
    void batches(List<Batch> batches, Map<Integer, List<RemakeSheet>> sheets) {
        for (Batch batch : batches) {
            if (batch.isClosed() && batch.envelopes() > 0) {
                opening(ClosingStep.OPEN, 1, List.of("Batch " + batch.number()));
            }
            if (batch.openedAt() != null && batch.handedOffAt() == null) {
                int toCopy = (int) sheets.getOrDefault(batch.number(), List.of()).stream()
                        .filter(sheet -> sheet.remadeAt() == null)
                        .count();
                opening(ClosingStep.COPY, toCopy, List.of("Batch " + batch.number()));
                opening(ClosingStep.HAND_OFF, 1, List.of("Batch " + batch.number()));
            }
        }
    }

    /** Decisions to follow up: they prevent the closing by themselves. */
    void contradicted(List<ContradictedDecision> found) {
        found.forEach(
                each -> name(ClosingStep.FOLLOW_UP, each.key().envelopeNo().value()));
    }

    /** Figures that nobody noted: of a voting location that sent no return, the return. */
    void figures(Set<String> locationsWithReturn) {
        for (BalanceResult balance : open) {
            if (balance instanceof BalanceResult.CannotBeChecked unchecked && !waiting.contains(balance)) {
                unchecked.missing().stream()
                        .filter(figure -> !isOfALocation(balance, figure))
                        .forEach(figure -> missing(balance.where(), figure, locationsWithReturn));
            }
        }
    }

    /** The county lacks a figure because one of its voting locations does. */
    private boolean isOfALocation(BalanceResult balance, Figure figure) {
        return balance.where().isCounty()
                && open.stream()
                        .filter(other -> !other.where().isCounty())
                        .anyMatch(other -> other instanceof BalanceResult.CannotBeChecked unchecked
                                && other.where().hours() == balance.where().hours()
                                && unchecked.missing().contains(figure));
    }

    private void missing(CanvassPlace where, Figure figure, Set<String> locationsWithReturn) {
        boolean ofReturn = OF_A_RETURN.contains(figure)
                && !where.isCounty()
                && !where.isOffice()
                && !locationsWithReturn.contains(where.name());
        if (ofReturn) {
            name(ClosingStep.RETURN, where.name());
        } else {
            name(ClosingStep.FIGURE, where.words() + ": " + figure.asked());
        }
    }

    /** Explanations that one supervisor has written: what is left is the second signature. */
    void explanations(List<BalanceExplanation> written) {
        written.stream()
                .filter(explanation -> !explanation.isSigned())
                .forEach(explanation -> open.stream()
                        .filter(explanation::isAbout)
                        .forEach(balance -> {
                            waiting.add(balance);
                            name(ClosingStep.SIGN, balance.words());
                        }));
    }

    /** Identities that differ, and that no work explains. */
    void totals() {
        open.stream()
                .filter(balance -> balance instanceof BalanceResult.Differs)
                .filter(balance -> !waiting.contains(balance))
                .filter(balance -> !isExplained(balance))
                .forEach(balance -> name(ClosingStep.TOTAL, balance.words()));
    }

    private boolean isExplained(BalanceResult balance) {
        if (balance.identity() == BalanceRule.NOTHING_PENDING) {
            return undecidedAt.contains(balance.where());
        }
        return OPENING.contains(balance.identity())
                && EnumSet.range(ClosingStep.KEPT_CLOSED, ClosingStep.HAND_OFF).stream()
                        .anyMatch(numbers::containsKey);
    }

    /** In the order of the work. */
    List<ClosingLine> lines() {
        List<ClosingLine> lines = new ArrayList<>();
        for (ClosingStep step : ClosingStep.values()) {
            Set<String> words = which.getOrDefault(step, Set.of());
            int number = numbers.getOrDefault(step, words.size());
            if (number > 0) {
                lines.add(new ClosingLine(step, number, List.copyOf(words)));
            }
        }
        return lines;
    }

    private boolean isOpen(Set<BalanceRule> identities) {
        return open.stream().map(BalanceResult::identity).anyMatch(identities::contains);
    }

    private void add(ClosingStep step, int number) {
        numbers.merge(step, number, Integer::sum);
    }

    private void name(ClosingStep step, String words) {
        which.computeIfAbsent(step, any -> new LinkedHashSet<>()).add(words);
    }
}
