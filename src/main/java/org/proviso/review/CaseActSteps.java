package org.proviso.review;

import java.time.Clock;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import org.proviso.access.OfficeUser;
import org.proviso.core.CourtOrder;
import org.proviso.core.Election;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.chain.Salt;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.core.deciding.RuleChecks;
import org.proviso.core.rules.DeadlineBook;
import org.proviso.core.rules.Rules;
import org.proviso.election.ElectionService;
import org.proviso.election.RulesService;
import org.proviso.intake.IntakeService;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.stereotype.Component;

/**
 * The steps that acts on a case have in common: the case is locked in the version it was seen in, and what stands in
 * the way of every act is looked at.
 */
@Component
public class CaseActSteps {

    private final CaseStore cases;
    private final ElectionService elections;
    private final RulesService rules;
    private final IntakeService intake;
    private final Clock clock;

    CaseActSteps(CaseStore cases, ElectionService elections, RulesService rules, IntakeService intake, Clock clock) {
        this.cases = cases;
        this.elections = elections;
        this.rules = rules;
        this.intake = intake;
        this.clock = clock;
    }

    /** The case, locked; an act on another version than the one there now is refused with what it is now. */
    public EnvelopeCase lock(EnvelopeKey key, int version) {
        EnvelopeCase envelopeCase = lock(key);
        if (envelopeCase.version() != version) {
            throw new OptimisticLockingFailureException("The case " + key.envelopeNo()
                    + " was changed since you saw it: it is now "
                    + envelopeCase.state().spoken()
                    + (envelopeCase.takenBy() == null ? "." : ", with " + envelopeCase.takenBy() + "."));
        }
        return envelopeCase;
    }

    /** The case, locked in the version it was seen in, together with others, all in the order of their keys. */
    public EnvelopeCase lockWith(EnvelopeKey key, int version, Collection<EnvelopeKey> others) {
        SortedSet<EnvelopeKey> together = new TreeSet<>(others);
        together.add(key);
        for (EnvelopeKey other : together.headSet(key)) {
            lock(other);
        }
        EnvelopeCase envelopeCase = lock(key, version);
        for (EnvelopeKey other : together.tailSet(key)) {
            lock(other);
        }
        return envelopeCase;
    }

    /** The case as it is, locked. */
    public EnvelopeCase lock(EnvelopeKey key) {
        return cases.lock(key)
                .orElseThrow(() -> new IllegalArgumentException(
                        "The election " + key.electionId() + " has no case of an envelope " + key.envelopeNo() + "."));
    }

    /** Nothing about a case changes once the election is closed. */
    public Optional<Refusal> closed(EnvelopeKey key) {
        return elections.closed(key.electionId());
    }

    /** Whoever works on a case has taken it. */
    public Optional<Refusal> notWith(EnvelopeCase envelopeCase, OfficeUser user) {
        return envelopeCase.isWith(user.userName())
                ? Optional.empty()
                : Optional.of(Refusal.of(Why.NOT_WITH_YOU, "Take the case first: it is not with you."));
    }

    /** What a court ordered is not opened again here while its order binds; empty where no order says how it is settled. */
    public Optional<Refusal> ordered(EnvelopeKey key) {
        return election(key.electionId()).orders().stream()
                .filter(order -> order.settles(key.envelopeNo()))
                .findFirst()
                .map(order -> Refusal.of(
                        Why.HELD_BY_COURT,
                        "The " + order.court() + " ordered how " + key.envelopeNo()
                                + " is settled: it is opened again only when that order is set aside."));
    }

    /** Nobody proposes against a court's order that binds: a supervisor enters it on the case instead. */
    public Optional<Refusal> againstOrder(EnvelopeKey key, DecisionOutcome as) {
        return election(key.electionId()).orders().stream()
                .filter(order -> order.settles(key.envelopeNo()))
                .filter(order -> (order.kind() == CourtOrder.Kind.COUNT) != (as != DecisionOutcome.REJECT))
                .findFirst()
                .map(order -> Refusal.of(
                        Why.HELD_BY_COURT,
                        "The " + order.court() + " ordered to " + order.kind().code() + " " + key.envelopeNo()
                                + ". While the order binds nobody proposes against it: a supervisor enters it on the"
                                + " case."));
    }

    /**
     * No case ends without a decision where a court ordered how it is settled, and no envelope leaves the county that a
     * court holds or wants preserved; empty where no order that binds says so.
     */
    public Optional<Refusal> endForbidden(EnvelopeKey key, boolean leaves) {
        EnvelopeNumber number = key.envelopeNo();
        return election(key.electionId()).orders().stream()
                .filter(order -> order.settles(number) || (leaves && order.keepsClosed(number)))
                .findFirst()
                .map(order -> Refusal.of(
                        Why.HELD_BY_COURT,
                        "An order of the " + order.court() + " binds " + number + ": while it does, "
                                + (leaves
                                        ? "the envelope is not sent on."
                                        : "the case is not closed without a decision.")));
    }

    /** No envelope is reviewed before the law lets it be. */
    public Optional<Refusal> reviewGate(EnvelopeKey key) {
        return RuleChecks.gate(book(key.electionId()), Rules.GATE_REVIEW, now(key.electionId()));
    }

    public DeadlineBook book(ElectionId electionId) {
        return rules.book(electionId);
    }

    /** The office's time, on the county's clock. */
    public LocalDateTime now(ElectionId electionId) {
        return LocalDateTime.ofInstant(clock.instant(), elections.zone(electionId))
                .truncatedTo(ChronoUnit.MILLIS);
    }

    public Election election(ElectionId electionId) {
        return elections
                .find(electionId)
                .orElseThrow(() -> new IllegalArgumentException("The office has no election \"" + electionId + "\"."));
    }

    /** What the ledger shows of a text that only the office may read. */
    public String hidden(EnvelopeKey key, String text) {
        return Objects.requireNonNull(
                        hiding(key.electionId(), List.of(key.envelopeNo())).get(key.envelopeNo()),
                        "every envelope has a way to hide its texts")
                .apply(text);
    }

    /** The same for several cases, by envelope number. */
    public Map<EnvelopeNumber, UnaryOperator<String>> hiding(
            ElectionId electionId, Collection<EnvelopeNumber> envelopeNos) {
        Map<EnvelopeNumber, Salt> salts = intake.salts(electionId, envelopeNos);
        Map<EnvelopeNumber, UnaryOperator<String>> hiding = new HashMap<>();
        envelopeNos.forEach(number -> hiding.put(number, text -> {
            Salt salt = salts.get(number);
            return salt == null ? new Salt("").hash("") : salt.hash(text);
        }));
        return hiding;
    }
}
