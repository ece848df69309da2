package org.proviso.files;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.proviso.core.Address;
import org.proviso.core.BallotStyle;
import org.proviso.core.CheckIn;
import org.proviso.core.Contest;
import org.proviso.core.Election;
import org.proviso.core.Envelope;
import org.proviso.core.MailBallot;
import org.proviso.core.PrecinctId;
import org.proviso.core.PrecinctPart;
import org.proviso.core.VotedElsewhere;
import org.proviso.core.Voter;
import org.proviso.core.adjudication.CureEvidence;
import org.proviso.core.adjudication.Link;
import org.proviso.core.adjudication.Located;
import org.proviso.core.adjudication.Recorded;
import org.proviso.core.adjudication.Records;
import org.proviso.core.matching.AddressNormalizer;
import org.proviso.core.matching.StreetAddress;
import org.proviso.core.matching.StreetFinding;
import org.proviso.core.matching.StreetIndex;
import org.proviso.core.rules.Ask;

/**
 * An election folder as the fact finder asks for it. A folder knows nothing of what persons did since: no search, no
 * signature compared, no poll book seen, no notice sent, nothing brought by a voter.
 */
public final class FolderRecords implements Records {

    private final ElectionFolder folder;
    private final StreetIndex streets;
    private final Map<String, BallotStyle> styles = new HashMap<>();
    private final Map<String, Contest> contests = new HashMap<>();
    private final Map<PrecinctId, List<PrecinctPart>> parts = new HashMap<>();
    private final Map<String, List<Envelope>> envelopesOf = new HashMap<>();

    /** The folder with the link of each envelope, by envelope number. */
    public FolderRecords(ElectionFolder folder, Map<String, Link> links) {
        this.folder = folder;
        this.streets = new StreetIndex(folder.streets());
        folder.styles().forEach(style -> styles.put(style.style(), style));
        folder.contests().forEach(contest -> contests.put(contest.contestId(), contest));
        for (PrecinctPart part : folder.precincts()) {
            PrecinctId key = new PrecinctId(part.precinct(), part.split());
            parts.computeIfAbsent(key, any -> new ArrayList<>()).add(part);
        }
        for (Envelope envelope : folder.envelopes()) {
            String voterId = links.get(envelope.envelopeNo()).voterId();
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
    public Optional<Voter> voter(String voterId) {
        return Optional.ofNullable(folder.voters().get(voterId));
    }

    @Override
    public List<MailBallot> mailBallots(String voterId) {
        return folder.mailBallots().getOrDefault(voterId, List.of());
    }

    @Override
    public List<CheckIn> checkIns(String voterId) {
        return folder.checkIns().getOrDefault(voterId, List.of());
    }

    @Override
    public List<VotedElsewhere> votedElsewhere(Envelope envelope, Optional<Voter> voter) {
        return folder.votedElsewhere().stream()
                .filter(line -> resembles(line, envelope, voter))
                .toList();
    }

    /** The same surname and birth date, or the same license: enough to look, never enough to know. */
    private static boolean resembles(VotedElsewhere line, Envelope envelope, Optional<Voter> voter) {
        Envelope.Affirmation said = envelope.affirmation();
        return same(line, said.name().last(), said.birthDate(), said.driversLicense())
                || voter.map(known -> same(line, known.name().last(), known.birthDate(), known.driversLicense()))
                        .orElse(false);
    }

    private static boolean same(VotedElsewhere line, String last, Object birthDate, String license) {
        boolean sameName = line.name().last().equalsIgnoreCase(last)
                && line.birthDate() != null
                && Objects.equals(line.birthDate(), birthDate);
        return sameName || !license.isEmpty() && license.equals(line.driversLicense());
    }

    @Override
    public List<Envelope> envelopesOf(String voterId) {
        return envelopesOf.getOrDefault(voterId, List.of());
    }

    @Override
    public Optional<BallotStyle> style(String style) {
        return Optional.ofNullable(styles.get(style));
    }

    @Override
    public List<PrecinctPart> rows(PrecinctId part) {
        return parts.getOrDefault(part, List.of());
    }

    @Override
    public Located locate(Address address) {
        if (address.isBlank()) {
            return new Located(Located.Place.NO_ADDRESS, List.of(), "The affirmation gives no address.");
        }
        StreetFinding finding = streets.find(address);
        List<PrecinctId> found = finding.parts();
        return switch (finding.result()) {
            case EXACT, PRESUMED ->
                new Located(
                        Located.Place.FOUND,
                        found,
                        ("The street file puts the address in " + found.get(0).words() + ". " + finding.note())
                                .strip());
            case SEVERAL ->
                new Located(
                        Located.Place.FOUND,
                        found,
                        ("The street file does not tell in which of " + found.size()
                                        + " precinct parts the address lies. " + finding.note())
                                .strip());
            case NONE -> nowhere(address, finding);
        };
    }

    private static Located nowhere(Address address, StreetFinding finding) {
        boolean placeGiven = !address.city().isBlank() || !address.zip().isBlank();
        return finding.knowsPlace() || !placeGiven
                ? new Located(
                        Located.Place.IN_COUNTY_NOT_FOUND,
                        List.of(),
                        ("The street file does not have this address. " + finding.note()).strip())
                : new Located(
                        Located.Place.OUT_OF_COUNTY,
                        List.of(),
                        "The street file of the county knows neither the city nor the ZIP code of the address.");
    }

    @Override
    public boolean sameAddress(Address one, Address other) {
        StreetAddress a = AddressNormalizer.parse(one);
        StreetAddress b = AddressNormalizer.parse(other);
        return a.houseNumber() != 0
                && a.houseNumber() == b.houseNumber()
                && a.street().equals(b.street());
    }

    @Override
    public boolean differsByASlip(Address written, Address other) {
        return AddressNormalizer.parse(written).isOneSlipFrom(AddressNormalizer.parse(other));
    }

    @Override
    public Set<String> federalContests() {
        Set<String> federal = new LinkedHashSet<>();
        for (Contest contest : folder.contests()) {
            if (contest.level() == Contest.Level.FEDERAL) {
                federal.add(contest.contestId());
            }
        }
        return federal;
    }

    @Override
    public List<CureEvidence> cureEvidence(String envelopeNo) {
        return List.of();
    }

    @Override
    public List<Recorded> recorded(String envelopeNo) {
        return List.of();
    }

    @Override
    public Map<Ask, LocalDateTime> noticesSent(String envelopeNo) {
        return Map.of();
    }

    @Override
    public String contestTitle(String contestId) {
        Contest contest = contests.get(contestId);
        return contest == null ? contestId : contest.title();
    }
}
