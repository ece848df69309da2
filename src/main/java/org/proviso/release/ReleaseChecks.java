package org.proviso.release;

import java.time.Clock;
import java.time.LocalDateTime;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.proviso.core.CourtOrder;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.Key;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.deciding.RuleChecks;
import org.proviso.core.rules.DeadlineBook;
import org.proviso.core.rules.Rules;
import org.proviso.election.ElectionService;
import org.proviso.election.OtherBallots;
import org.proviso.election.RulesService;
import org.springframework.stereotype.Component;

/** When envelopes may be opened, and together with which others. */
@Component
class ReleaseChecks {

    private static final Set<CourtOrder.Kind> KEEPS_CLOSED = EnumSet.of(CourtOrder.Kind.HOLD, CourtOrder.Kind.PRESERVE);

    private final ElectionService elections;
    private final RulesService rules;
    private final OtherBallots others;
    private final Clock clock;

    ReleaseChecks(ElectionService elections, RulesService rules, OtherBallots others, Clock clock) {
        this.elections = elections;
        this.rules = rules;
        this.others = others;
        this.clock = clock;
    }

    /** Whether nothing may be opened yet, and until when. */
    Optional<Refusal> gate(ElectionId electionId) {
        return closed(electionId).or(() -> notYet(electionId));
    }

    private Optional<Refusal> notYet(ElectionId electionId) {
        DeadlineBook book = rules.book(electionId);
        LocalDateTime now = LocalDateTime.ofInstant(clock.instant(), elections.zone(electionId));
        return RuleChecks.gate(book, Rules.GATE_OPEN, now).or(() -> othersFirst(book, electionId));
    }

    private Optional<Refusal> othersFirst(DeadlineBook book, ElectionId electionId) {
        Optional<Refusal> unsettled = RuleChecks.firm(book.pack(), Rules.OPEN_AFTER_ALL_OTHERS);
        if (unsettled.isPresent()) {
            return unsettled;
        }
        return RuleChecks.othersFirst(
                book.pack(),
                Rules.OPEN_AFTER_ALL_OTHERS,
                () -> others.areCounted(electionId),
                "All mail and in-person ballots are counted first. A supervisor records when they are.");
    }

    /** The orders by which courts keep envelopes closed. */
    List<CourtOrder> keepingClosed(ElectionId electionId) {
        return elections.find(electionId).orElseThrow().orders().stream()
                .filter(order -> order.binds() && KEEPS_CLOSED.contains(order.kind()))
                .toList();
    }

    /** Nothing changes in the batches of an election that is closed. */
    Optional<Refusal> closed(ElectionId electionId) {
        return elections.closed(electionId);
    }

    /** A batch that is open cannot be put right any more, and a dissolved one has nothing left in it. */
    static Optional<Refusal> stillClosed(Batch batch) {
        if (batch.dissolvedAt() != null) {
            return Optional.of(Refusal.of(Why.NOT_IN_THIS_STATE, "This batch was dissolved. Make another one."));
        }
        return Refusal.when(
                batch.openedAt() != null,
                Why.NOT_IN_THIS_STATE,
                "This batch is open already. Its envelopes cannot leave it.");
    }

    /** A batch from which envelopes were taken out until one was left. */
    static Optional<Refusal> leftAlone(Batch batch) {
        return Refusal.when(
                batch.envelopes() == 0
                        || (batch.envelopes() == 1 && batch.aloneBecause().isBlank()),
                Why.SECRECY,
                "Too few envelopes are left in this batch: a ballot opened alone shows how its voter voted. Dissolve the"
                        + " batch and put the envelope into another one.");
    }

    static Optional<Refusal> notAsked(Batch batch) {
        return Refusal.when(
                batch.dissolveAskedBy() == null,
                Why.NOT_IN_THIS_STATE,
                "Nobody has asked to dissolve this batch. Enter a reason and ask first.");
    }

    static Optional<Refusal> askedAlready(Batch batch) {
        return Refusal.when(
                batch.dissolveAskedBy() != null,
                Why.NOTHING_NEW,
                "Someone has asked to dissolve this batch already. Another team member dissolves it or keeps it.");
    }

    static Optional<Refusal> reason(String because) {
        return because.isBlank()
                ? Optional.of(Refusal.at("because", Why.NO_REASON, "Required. Enter the reason."))
                : Optional.empty();
    }

    /** A ballot opened alone can be told by whoever sees the envelope; it takes a reason (common practice). */
    static Optional<Refusal> alone(Collection<?> envelopes, String because) {
        return envelopes.size() == 1 && because.isBlank()
                ? Optional.of(Refusal.at(
                        "aloneBecause",
                        Why.SECRECY,
                        "A ballot opened alone shows how its voter voted. Add more envelopes, or enter why this one"
                                + " cannot wait."))
                : Optional.empty();
    }

    /** Every envelope asked for waits to be opened. */
    static Optional<Refusal> waiting(Set<EnvelopeNumber> asked, Set<EnvelopeNumber> waiting) {
        if (asked.isEmpty()) {
            return Optional.of(Refusal.of(Why.NOT_IN_THIS_STATE, "Select the envelopes to open together."));
        }
        List<EnvelopeNumber> others = asked.stream()
                .filter(number -> !waiting.contains(number))
                .sorted()
                .toList();
        return Refusal.when(
                !others.isEmpty(),
                Why.NOT_IN_THIS_STATE,
                "These envelopes cannot be opened now: " + Key.join(", ", others) + ".");
    }

    /** Ballots of court-extended hours are never opened with others. */
    static Optional<Refusal> oneKind(Collection<EnvelopeToOpen> envelopes) {
        long kinds = envelopes.stream()
                .map(envelope -> envelope.decision().ballot().heldApart())
                .distinct()
                .count();
        return Refusal.when(
                kinds > 1,
                Why.SECRECY,
                "Ballots cast in court-extended hours are kept apart. Make a separate batch for them.");
    }

    static Optional<Refusal> sealed(Batch batch) {
        return stillClosed(batch)
                .or(() -> dissolving(batch))
                .or(() -> Refusal.when(
                        batch.firstOpener() != null, Why.NOT_IN_THIS_STATE, "Somebody has begun to open this batch."));
    }

    /** While somebody asks that it be dissolved, it is not opened. */
    private static Optional<Refusal> dissolving(Batch batch) {
        return Refusal.when(
                batch.dissolveAskedBy() != null,
                Why.NOT_IN_THIS_STATE,
                "Someone has asked to dissolve this batch. Dissolve it or keep it first.");
    }

    /** What is being opened, or open, was opened on that word. */
    static Optional<Refusal> noneBegun(List<Batch> batches) {
        return batches.stream()
                .filter(batch -> batch.firstOpener() != null)
                .findFirst()
                .map(batch -> Refusal.of(
                        Why.NOT_IN_THIS_STATE,
                        "Batch " + batch.number()
                                + " was begun to open. What was recorded can no longer be taken back."));
    }

    static Optional<Refusal> beingOpened(Batch batch) {
        Optional<Refusal> dissolving = dissolving(batch);
        if (dissolving.isPresent()) {
            return dissolving;
        }
        if (batch.firstOpener() == null) {
            return Optional.of(Refusal.of(Why.NOT_IN_THIS_STATE, "Nobody has begun to open this batch."));
        }
        return Refusal.when(batch.openedAt() != null, Why.NOT_IN_THIS_STATE, "This batch is open already.");
    }

    static Optional<Refusal> possible(Batch batch, int empty) {
        return empty < 0 || empty > batch.envelopes()
                ? Optional.of(Refusal.at(
                        "empty",
                        Why.MISTYPED,
                        "The batch has " + batch.envelopes() + " envelopes. Enter a number from 0 to "
                                + batch.envelopes() + "."))
                : Optional.empty();
    }

    static Optional<Refusal> open(Batch batch) {
        return Refusal.when(batch.openedAt() == null, Why.NOT_IN_THIS_STATE, "This batch is not open yet.");
    }

    static Optional<Refusal> toBeCopied(RemakeSheet sheet) {
        return Refusal.when(
                sheet.firstCopier() != null, Why.NOT_IN_THIS_STATE, "Somebody has begun to copy this sheet.");
    }

    static Optional<Refusal> beingCopied(RemakeSheet sheet) {
        if (sheet.firstCopier() == null) {
            return Optional.of(Refusal.of(Why.NOT_IN_THIS_STATE, "Nobody has begun to copy this sheet."));
        }
        return Refusal.when(sheet.remadeAt() != null, Why.NOT_IN_THIS_STATE, "This sheet is remade already.");
    }

    /** A batch is handed off once, when everything is remade and the ballots are counted again. */
    static Optional<Refusal> handOff(Batch batch, List<RemakeSheet> sheets, int counted) {
        if (batch.handedOffAt() != null) {
            return Optional.of(Refusal.of(Why.NOT_IN_THIS_STATE, "The ballots of this batch were handed off already."));
        }
        if (sheets.stream().anyMatch(sheet -> sheet.remadeAt() == null)) {
            return Optional.of(Refusal.of(Why.NOT_IN_THIS_STATE, "Some sheets of this batch are not remade yet."));
        }
        return counted == batch.ballots()
                ? Optional.empty()
                : Optional.of(Refusal.at(
                        "ballots",
                        Why.OUT_OF_BALANCE,
                        "You counted " + counted + " ballots, but the batch has " + batch.ballots()
                                + ". Count again."));
    }
}
