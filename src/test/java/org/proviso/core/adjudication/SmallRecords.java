package org.proviso.core.adjudication;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
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
import org.proviso.core.adjudication.finding.CureEvidence;
import org.proviso.core.adjudication.finding.LocatedAddress;
import org.proviso.core.adjudication.finding.RecordedFact;
import org.proviso.core.adjudication.finding.Records;
import org.proviso.core.matching.spelling.AddressNormalizer;
import org.proviso.core.rules.Ask;

/**
 * The records of a county with a voter, two precincts and a split: style A in precinct 1 (served at the Library), B in
 * precinct 2 (at the Town Hall), C in precinct 2 split X. The street file knows the lines it is told.
 */
final class SmallRecords implements Records {

    static final PrecinctId ONE = new PrecinctId("1", "");
    static final PrecinctId TWO = new PrecinctId("2", "");
    static final PrecinctId TWO_X = new PrecinctId("2", "X");

    Election election = SmallElection.GENERAL;
    final Map<String, Voter> voters = new LinkedHashMap<>();
    final List<MailBallot> mailBallots = new ArrayList<>();
    final List<CheckIn> checkIns = new ArrayList<>();
    final List<VotedElsewhere> elsewhere = new ArrayList<>();
    final List<Envelope> envelopes = new ArrayList<>();
    final List<CureEvidence> cures = new ArrayList<>();
    final List<RecordedFact> recorded = new ArrayList<>();
    final Map<Ask, LocalDateTime> notices = new LinkedHashMap<>();
    final Map<String, LocatedAddress> streets = new LinkedHashMap<>();
    final List<PrecinctPart> rows = new ArrayList<>(List.of(
            new PrecinctPart("1", "", "A", "", "Library"),
            new PrecinctPart("2", "", "B", "", "Town Hall"),
            new PrecinctPart("2", "X", "C", "", "Town Hall")));
    final Map<String, BallotStyle> styles = new LinkedHashMap<>();

    SmallRecords() {
        style("A", "", "PRES", "HOUSE", "SENATE-7", "SHERIFF");
        style("B", "", "PRES", "HOUSE", "SENATE-8", "SHERIFF");
        style("C", "", "PRES", "HOUSE", "SENATE-8", "SHERIFF", "SCHOOL");
        lives("1 Elm St", ONE);
        lives("2 Oak St", TWO);
        lives("3 Oak St", TWO_X);
    }

    void style(String style, String party, String... contests) {
        styles.put(style, new BallotStyle(style, party, new LinkedHashSet<>(List.of(contests))));
    }

    /** The street file puts the line in these parts. */
    void lives(String line, PrecinctId... parts) {
        streets.put(line, new LocatedAddress(LocatedAddress.Place.FOUND, List.of(parts), "The street file says so."));
    }

    @Override
    public Election election() {
        return election;
    }

    @Override
    public Optional<Voter> voter(VoterId voterId) {
        return Optional.ofNullable(voters.get(voterId.value()));
    }

    @Override
    public List<MailBallot> mailBallots(VoterId voterId) {
        return mailBallots;
    }

    @Override
    public List<CheckIn> checkIns(VoterId voterId) {
        return checkIns;
    }

    @Override
    public List<VotedElsewhere> votedElsewhere(Envelope envelope, Optional<Voter> voter) {
        return elsewhere;
    }

    @Override
    public List<Envelope> envelopesOf(VoterId voterId) {
        return envelopes;
    }

    @Override
    public Optional<BallotStyle> style(String style) {
        return Optional.ofNullable(styles.get(style));
    }

    @Override
    public List<PrecinctPart> rows(PrecinctId part) {
        return rows.stream()
                .filter(row ->
                        row.precinct().equals(part.precinct()) && row.split().equals(part.split()))
                .toList();
    }

    @Override
    public LocatedAddress locate(Address address) {
        return address.isBlank()
                ? new LocatedAddress(LocatedAddress.Place.NO_ADDRESS, List.of(), "The affirmation gives no address.")
                : streets.getOrDefault(
                        address.line(),
                        new LocatedAddress(
                                LocatedAddress.Place.OUT_OF_COUNTY, List.of(), "Not an address of this county."));
    }

    @Override
    public boolean differsByASlip(Address written, Address other) {
        return AddressNormalizer.parse(written).isOneSlipFrom(AddressNormalizer.parse(other));
    }

    @Override
    public boolean sameAddress(Address address, Address other) {
        return address.line().equals(other.line());
    }

    @Override
    public Set<String> federalContests() {
        return Set.of("PRES", "HOUSE");
    }

    @Override
    public List<CureEvidence> cureEvidence(EnvelopeNumber envelopeNo) {
        return cures;
    }

    @Override
    public List<RecordedFact> recorded(EnvelopeNumber envelopeNo) {
        return recorded;
    }

    @Override
    public Map<Ask, LocalDateTime> noticesSent(EnvelopeNumber envelopeNo) {
        return notices;
    }

    @Override
    public String contestTitle(String contestId) {
        return contestId;
    }
}
