package org.proviso.review;

import java.time.LocalDateTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.proviso.core.Address;
import org.proviso.core.BallotStyle;
import org.proviso.core.CheckIn;
import org.proviso.core.Election;
import org.proviso.core.Envelope;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.MailBallot;
import org.proviso.core.PrecinctId;
import org.proviso.core.PrecinctPart;
import org.proviso.core.VotedElsewhere;
import org.proviso.core.Voter;
import org.proviso.core.VoterId;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.finding.CureEvidence;
import org.proviso.core.adjudication.finding.LocatedAddress;
import org.proviso.core.adjudication.finding.RecordedFact;
import org.proviso.core.adjudication.finding.Records;
import org.proviso.core.adjudication.finding.StateListMatches;
import org.proviso.core.rules.Ask;

/**
 * What the office holds about several cases, read together, so that many of them cost as many statements as one. Whatever
 * is asked of anybody else is asked of the tables one by one.
 */
public record RecordsTogether(Records each, OfEnvelopes envelopes, OfVoters voters) implements Records {

    /** What was read of the envelopes, by envelope number. */
    public record OfEnvelopes(
            Set<EnvelopeNumber> asked,
            Map<EnvelopeNumber, List<CureEvidence>> brought,
            Map<EnvelopeNumber, List<RecordedFact>> recorded,
            Map<EnvelopeNumber, Map<Ask, LocalDateTime>> told) {}

    /** What was read of the voters whom they are linked to, by voter id, and the lines that may be about any of them. */
    public record OfVoters(
            Set<VoterId> asked,
            Map<VoterId, Voter> roll,
            Map<VoterId, List<MailBallot>> mailBallots,
            Map<VoterId, List<CheckIn>> checkIns,
            Map<VoterId, List<Envelope>> envelopes,
            List<VotedElsewhere> elsewhere) {}

    /** The same as if nobody had looked at a signature yet. */
    public RecordsTogether beforeLooks() {
        Map<EnvelopeNumber, List<RecordedFact>> recorded = new HashMap<>();
        envelopes
                .recorded()
                .forEach((number, facts) -> recorded.put(
                        number,
                        facts.stream()
                                .filter(fact -> !fact.fact().equals(Fact.SIGNATURE_COMPARISON))
                                .toList()));
        return new RecordsTogether(
                each, new OfEnvelopes(envelopes.asked(), envelopes.brought(), recorded, envelopes.told()), voters);
    }

    private <V> V of(VoterId voterId, Map<VoterId, V> read, V none, Function<VoterId, V> single) {
        return voters.asked().contains(voterId) ? read.getOrDefault(voterId, none) : single.apply(voterId);
    }

    @Override
    public Election election() {
        return each.election();
    }

    @Override
    public Optional<Voter> voter(VoterId voterId) {
        return voters.asked().contains(voterId)
                ? Optional.ofNullable(voters.roll().get(voterId))
                : each.voter(voterId);
    }

    @Override
    public List<MailBallot> mailBallots(VoterId voterId) {
        return of(voterId, voters.mailBallots(), List.of(), each::mailBallots);
    }

    @Override
    public List<CheckIn> checkIns(VoterId voterId) {
        return of(voterId, voters.checkIns(), List.of(), each::checkIns);
    }

    @Override
    public List<VotedElsewhere> votedElsewhere(Envelope envelope, Optional<Voter> voter) {
        boolean read = envelopes.asked().contains(envelope.envelopeNo())
                && voter.map(Voter::voterId).map(voters.asked()::contains).orElse(true);
        return read
                ? StateListMatches.resembling(voters.elsewhere(), envelope, voter)
                : each.votedElsewhere(envelope, voter);
    }

    @Override
    public List<Envelope> envelopesOf(VoterId voterId) {
        return of(voterId, voters.envelopes(), List.of(), each::envelopesOf);
    }

    @Override
    public List<CureEvidence> cureEvidence(EnvelopeNumber envelopeNo) {
        return envelopes.asked().contains(envelopeNo)
                ? envelopes.brought().getOrDefault(envelopeNo, List.of())
                : each.cureEvidence(envelopeNo);
    }

    @Override
    public List<RecordedFact> recorded(EnvelopeNumber envelopeNo) {
        return envelopes.asked().contains(envelopeNo)
                ? envelopes.recorded().getOrDefault(envelopeNo, List.of())
                : each.recorded(envelopeNo);
    }

    @Override
    public Map<Ask, LocalDateTime> noticesSent(EnvelopeNumber envelopeNo) {
        return envelopes.asked().contains(envelopeNo)
                ? envelopes.told().getOrDefault(envelopeNo, Map.of())
                : each.noticesSent(envelopeNo);
    }

    @Override
    public Optional<BallotStyle> style(String style) {
        return each.style(style);
    }

    @Override
    public List<PrecinctPart> rows(PrecinctId part) {
        return each.rows(part);
    }

    @Override
    public LocatedAddress locate(Address address) {
        return each.locate(address);
    }

    @Override
    public boolean sameAddress(Address address, Address other) {
        return each.sameAddress(address, other);
    }

    @Override
    public boolean differsByASlip(Address written, Address other) {
        return each.differsByASlip(written, other);
    }

    @Override
    public Set<String> federalContests() {
        return each.federalContests();
    }

    @Override
    public String contestTitle(String contestId) {
        return each.contestTitle(contestId);
    }
}
