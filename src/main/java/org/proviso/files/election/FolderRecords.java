package org.proviso.files.election;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
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
import org.proviso.core.adjudication.finding.AddressLocator;
import org.proviso.core.adjudication.finding.BallotCatalog;
import org.proviso.core.adjudication.finding.CureEvidence;
import org.proviso.core.adjudication.finding.Link;
import org.proviso.core.adjudication.finding.LocatedAddress;
import org.proviso.core.adjudication.finding.RecordedFact;
import org.proviso.core.adjudication.finding.Records;
import org.proviso.core.adjudication.finding.StateListMatches;
import org.proviso.core.rules.Ask;

/**
 * An election folder as the fact finder asks for it. A folder knows nothing of what persons did since: no search, no
 * signature compared, no poll book seen, no notice sent, nothing brought by a voter.
 */
public final class FolderRecords implements Records {

    private final ElectionFolder folder;
    private final BallotCatalog ballots;
    private final AddressLocator addresses;
    private final Map<VoterId, List<Envelope>> envelopesOf = new HashMap<>();

    /** The folder with the link of each envelope, by envelope number. */
    public FolderRecords(ElectionFolder folder, Map<EnvelopeNumber, Link> links) {
        this.folder = folder;
        this.ballots = new BallotCatalog(folder.contests(), folder.styles(), folder.precincts());
        this.addresses = new AddressLocator(folder.streets());
        for (Envelope envelope : folder.envelopes()) {
            VoterId voterId = Objects.requireNonNull(
                            links.get(envelope.envelopeNo()), "every envelope has a link, if only to nobody")
                    .voterId();
            if (voterId != null) {
                envelopesOf.computeIfAbsent(voterId, any -> new ArrayList<>()).add(envelope);
            }
        }
    }

    @Override
    public Election election() {
        return folder.election();
    }

    @Override
    public Optional<Voter> voter(VoterId voterId) {
        return Optional.ofNullable(folder.voters().get(voterId));
    }

    @Override
    public List<MailBallot> mailBallots(VoterId voterId) {
        return folder.mailBallots().getOrDefault(voterId, List.of());
    }

    @Override
    public List<CheckIn> checkIns(VoterId voterId) {
        return folder.checkIns().getOrDefault(voterId, List.of());
    }

    @Override
    public List<VotedElsewhere> votedElsewhere(Envelope envelope, Optional<Voter> voter) {
        return StateListMatches.resembling(folder.votedElsewhere(), envelope, voter);
    }

    @Override
    public List<Envelope> envelopesOf(VoterId voterId) {
        return envelopesOf.getOrDefault(voterId, List.of());
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
        return List.of();
    }

    @Override
    public List<RecordedFact> recorded(EnvelopeNumber envelopeNo) {
        return List.of();
    }

    @Override
    public Map<Ask, LocalDateTime> noticesSent(EnvelopeNumber envelopeNo) {
        return Map.of();
    }

    @Override
    public String contestTitle(String contestId) {
        return ballots.contestTitle(contestId);
    }
}
