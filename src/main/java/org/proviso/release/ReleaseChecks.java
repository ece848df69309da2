package org.proviso.release;

import java.time.Clock;
import java.time.LocalDateTime;
import java.util.Collection;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import org.proviso.core.CourtOrder;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.deciding.RuleChecks;
import org.proviso.core.rules.DeadlineBook;
import org.proviso.core.rules.Rules;
import org.proviso.election.ElectionService;
import org.proviso.election.RulesService;
import org.springframework.stereotype.Component;

/** When envelopes may be opened, and together with which others. */
@Component
class ReleaseChecks {

    private static final Set<CourtOrder.Kind> KEEPS_CLOSED = EnumSet.of(CourtOrder.Kind.HOLD, CourtOrder.Kind.PRESERVE);
    private static final Set<CourtOrder.Status> BINDING =
            EnumSet.of(CourtOrder.Status.IN_FORCE, CourtOrder.Status.FINAL);

    private final ElectionService elections;
    private final RulesService rules;
    private final BatchStore batches;
    private final Clock clock;

    ReleaseChecks(ElectionService elections, RulesService rules, BatchStore batches, Clock clock) {
        this.elections = elections;
        this.rules = rules;
        this.batches = batches;
        this.clock = clock;
    }

    /** Whether nothing may be opened yet, and until when. */
    Optional<Refusal> gate(ElectionId electionId) {
        if (elections.isClosed(electionId)) {
            return Optional.of(Refusal.of(Why.ELECTION_CLOSED, "The election is closed."));
        }
        DeadlineBook book = rules.book(electionId);
        LocalDateTime now = LocalDateTime.ofInstant(clock.instant(), elections.zone(electionId));
        return RuleChecks.gate(book, Rules.GATE_OPEN, now).or(() -> othersFirst(book, electionId));
    }

    private Optional<Refusal> othersFirst(DeadlineBook book, ElectionId electionId) {
        Optional<Refusal> unsettled = RuleChecks.firm(book.pack(), Rules.OPEN_AFTER_ALL_OTHERS);
        if (unsettled.isPresent()) {
            return unsettled;
        }
        return book.pack().isYes(Rules.OPEN_AFTER_ALL_OTHERS) && !batches.othersDone(electionId)
                ? Optional.of(Refusal.under(
                        book.pack().of(Rules.OPEN_AFTER_ALL_OTHERS),
                        Why.GATE_NOT_OPEN,
                        "Not yet: all mail and in-person ballots come first. Record when they are done."))
                : Optional.empty();
    }

    /** Envelopes that a court keeps closed. */
    Set<EnvelopeNumber> keptClosed(ElectionId electionId) {
        Set<EnvelopeNumber> closed = new HashSet<>();
        elections.find(electionId).orElseThrow().orders().stream()
                .filter(order -> KEEPS_CLOSED.contains(order.kind()) && BINDING.contains(order.standing()))
                .forEach(order -> closed.addAll(order.envelopeNos()));
        return closed;
    }

    /** A ballot opened alone can be told by whoever sees the envelope; it takes a reason (common practice). */
    Optional<Refusal> alone(Collection<?> envelopes, String because) {
        return envelopes.size() == 1 && because.isBlank()
                ? Optional.of(Refusal.of(
                        Why.SECRECY,
                        "One envelope alone shows how its voter voted: put more together, or say why it cannot wait."))
                : Optional.empty();
    }
}
