package org.proviso.review.facts;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.proviso.core.Address;
import org.proviso.core.BallotStyle;
import org.proviso.core.CheckIn;
import org.proviso.core.Election;
import org.proviso.core.ElectionId;
import org.proviso.core.Envelope;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.MailBallot;
import org.proviso.core.PrecinctId;
import org.proviso.core.PrecinctPart;
import org.proviso.core.VotedElsewhere;
import org.proviso.core.Voter;
import org.proviso.core.VoterId;
import org.proviso.core.adjudication.finding.AddressLocator;
import org.proviso.core.adjudication.finding.BallotCatalog;
import org.proviso.core.adjudication.finding.CureEvidence;
import org.proviso.core.adjudication.finding.LocatedAddress;
import org.proviso.core.adjudication.finding.RecordedFact;
import org.proviso.core.adjudication.finding.Records;
import org.proviso.core.rules.Ask;
import org.proviso.intake.IntakeService;
import org.proviso.roll.RollService;

/** The office's tables as the fact finder asks for them: the same bytes come out as over the folder they came from. */
record DatabaseRecords(
        Election election,
        BallotCatalog ballots,
        AddressLocator addresses,
        RollService roll,
        IntakeService intake,
        LinkedEnvelopes links,
        PersonsActs acts)
        implements Records {

    /** What persons did to a case since its envelope came. */
    interface PersonsActs {

        List<RecordedFact> recorded(EnvelopeKey key);

        Map<Ask, LocalDateTime> told(EnvelopeKey key);
    }

    private ElectionId id() {
        return election.id();
    }

    @Override
    public Optional<Voter> voter(VoterId voterId) {
        return roll.voter(id(), voterId);
    }

    @Override
    public List<MailBallot> mailBallots(VoterId voterId) {
        return roll.mailBallots(id(), voterId);
    }

    @Override
    public List<CheckIn> checkIns(VoterId voterId) {
        return roll.checkIns(id(), voterId);
    }

    @Override
    public List<VotedElsewhere> votedElsewhere(Envelope envelope, Optional<Voter> voter) {
        return roll.votedElsewhere(id(), envelope, voter);
    }

    @Override
    public List<Envelope> envelopesOf(VoterId voterId) {
        return intake.envelopes(id(), links.of(voterId));
    }

    @Override
    public Optional<BallotStyle> style(String style) {
        return ballots.style(style);
    }

    @Override
    public List<PrecinctPart> rows(PrecinctId part) {
        return ballots.rows(part);
    }

    @Override
    public LocatedAddress locate(Address address) {
        return addresses.locate(address);
    }

    @Override
    public boolean sameAddress(Address address, Address other) {
        return AddressLocator.same(address, other);
    }

    @Override
    public boolean differsByASlip(Address written, Address other) {
        return AddressLocator.differBySlip(written, other);
    }

    @Override
    public Set<String> federalContests() {
        return ballots.federalContests();
    }

    @Override
    public List<CureEvidence> cureEvidence(EnvelopeNumber envelopeNo) {
        return intake.cureEvidence(id(), envelopeNo, election.zone());
    }

    @Override
    public List<RecordedFact> recorded(EnvelopeNumber envelopeNo) {
        return acts.recorded(new EnvelopeKey(id(), envelopeNo));
    }

    @Override
    public Map<Ask, LocalDateTime> noticesSent(EnvelopeNumber envelopeNo) {
        return acts.told(new EnvelopeKey(id(), envelopeNo));
    }

    @Override
    public String contestTitle(String contestId) {
        return ballots.contestTitle(contestId);
    }
}
