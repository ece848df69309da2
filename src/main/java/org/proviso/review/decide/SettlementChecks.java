package org.proviso.review.decide;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.OrderFact;
import org.proviso.core.adjudication.judging.Assessment;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.core.contests.BallotContests;
import org.proviso.core.deciding.CaseToDecide;
import org.proviso.core.deciding.DecisionChecks;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.core.deciding.DecisionParticipants;
import org.proviso.core.rules.DeadlineBook;
import org.proviso.core.rules.Reason;
import org.proviso.election.OtherBallots;
import org.proviso.review.CaseAct;
import org.proviso.review.CaseActSteps;
import org.proviso.review.CaseGraph;
import org.proviso.review.DecidedBy;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.ProposalStore;
import org.proviso.review.ReadProposal;
import org.proviso.review.Settlement;
import org.proviso.review.facts.VoterGroups;
import org.springframework.stereotype.Component;

/** Whether one case may be settled as the decider wants it, by the law and by what became of the voter's other envelopes. */
@Component
class SettlementChecks {

    /** What the decisions of one act are judged by, read together: the law, the moment, and what the cases rest on. */
    record Judging(
            DeadlineBook book,
            LocalDateTime at,
            DecidedBy by,
            VoterGroups.Found groups,
            Map<EnvelopeNumber, ReadProposal> proposals,
            Optional<Refusal> othersFirst) {

        private DecisionParticipants acts(EnvelopeKey key) {
            Optional<ReadProposal> standing = Optional.ofNullable(proposals.get(key.envelopeNo()))
                    .filter(read -> read.proposal().stands());
            return new DecisionParticipants(
                    standing.map(read -> read.proposal().proposedBy()).orElse(null),
                    standing.map(ReadProposal::secondReadBy).orElse(null),
                    by.voters());
        }
    }

    private final CaseActSteps steps;
    private final ProposalStore proposals;
    private final VoterGroups groups;
    private final OtherBallots others;

    SettlementChecks(CaseActSteps steps, ProposalStore proposals, VoterGroups groups, OtherBallots others) {
        this.steps = steps;
        this.proposals = proposals;
        this.groups = groups;
        this.others = others;
    }

    /** Reads what decisions on these locked cases of one election are judged by. */
    Judging judging(ElectionId electionId, Collection<EnvelopeKey> keys, DecidedBy by) {
        List<EnvelopeNumber> numbers =
                keys.stream().map(EnvelopeKey::envelopeNo).toList();
        return new Judging(
                steps.book(electionId),
                steps.now(electionId),
                by,
                groups.of(keys),
                proposals.newest(electionId, numbers),
                others.beforeDeciding(electionId));
    }

    /** Everything in the way of a decision on a locked case; {@code countedBeside} are persons counted in the same act. */
    static List<Refusal> refusals(
            EnvelopeCase envelopeCase,
            Settlement settlement,
            Assessment settled,
            Judging by,
            Set<String> countedBeside) {
        Optional<Refusal> notReady = CaseGraph.refusal(envelopeCase.state(), CaseAct.DECIDE);
        if (notReady.isPresent()) {
            return List.of(notReady.get());
        }
        List<Refusal> refusals = new ArrayList<>(DecisionChecks.all(
                settlement.as(),
                new CaseToDecide(settled, settlement.contests(), settlement.grounds(), by.acts(envelopeCase.key())),
                by.book(),
                by.at()));
        by.othersFirst().ifPresent(refusals::add);
        List<EnvelopeCase> others = by.groups().otherCases(envelopeCase.key());
        Stream.of(
                        held(settled),
                        onlyOne(envelopeCase, settlement, others, countedBeside),
                        otherCounts(settlement, others),
                        contestsNamed(settlement, settled))
                .flatMap(Optional::stream)
                .forEach(refusals::add);
        return refusals;
    }

    /** The contests that count: those named, or those the rules recommend. */
    static Set<String> contests(Settlement settlement, Assessment settled) {
        if (settlement.as() != DecisionOutcome.COUNT_IN_PART) {
            return Set.of();
        }
        return settlement.contests().isEmpty() ? settled.outcome().contests() : settlement.contests();
    }

    /** Nobody's second envelope counts. */
    static Optional<Refusal> onlyOne(
            EnvelopeCase envelopeCase, Settlement settlement, List<EnvelopeCase> others, Set<String> countedBeside) {
        if (settlement.as() == DecisionOutcome.REJECT) {
            return Optional.empty();
        }
        if (envelopeCase.personId() == null) {
            return Optional.of(
                    Refusal.of(Why.LINK_NOT_SETTLED, "Nothing counts before it is settled who the voter is."));
        }
        Optional<EnvelopeNumber> counted = others.stream()
                .filter(other -> other.countedPerson() != null)
                .map(other -> other.key().envelopeNo())
                .findFirst();
        return counted.map(number -> another(number.value()))
                .or(() -> countedBeside.contains(envelopeCase.personId())
                        ? Optional.of(another("put to the same vote"))
                        : Optional.empty());
    }

    private static Refusal another(String which) {
        return Refusal.of(Why.ANOTHER_ENVELOPE, "Another envelope of this voter counts: " + which + ".");
    }

    /** An envelope is not rejected for another one of the voter's before that one counts. */
    private static Optional<Refusal> otherCounts(Settlement settlement, List<EnvelopeCase> others) {
        boolean forAnother = settlement.as() == DecisionOutcome.REJECT
                && settlement.grounds().reasons().contains(Reason.OTHER_ENVELOPE_COUNTED);
        boolean counts = others.stream().map(EnvelopeCase::countedPerson).anyMatch(Objects::nonNull);
        return forAnother && !counts
                ? Optional.of(Refusal.of(
                        Why.ANOTHER_ENVELOPE, "No other envelope of this voter counts yet; decide that one first."))
                : Optional.empty();
    }

    private static Optional<Refusal> held(Assessment settled) {
        return settled.facts().one(Fact.COURT_ORDER) == OrderFact.HOLD
                ? Optional.of(Refusal.of(Why.HELD_BY_COURT, "A court ordered this envelope held."))
                : Optional.empty();
    }

    private static Optional<Refusal> contestsNamed(Settlement settlement, Assessment settled) {
        if (settlement.as() != DecisionOutcome.COUNT_IN_PART) {
            return Optional.empty();
        }
        boolean recommended = settled.outcome().recommendation() == Recommendation.COUNT_IN_PART;
        if (settlement.contests().isEmpty()) {
            return recommended
                    ? Optional.empty()
                    : Optional.of(Refusal.of(Why.NO_CONTESTS, "Name the contests that count."));
        }
        Set<String> strange = new LinkedHashSet<>(settlement.contests());
        BallotContests contests = settled.facts().contests();
        strange.removeAll(contests == null ? settlement.contests() : contests.cast());
        return strange.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        Refusal.of(Why.NO_CONTESTS, "Not on the ballot cast: " + String.join(", ", strange) + "."));
    }
}
