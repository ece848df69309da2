package org.proviso.review.facts;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.proviso.core.BetweenRooms;
import org.proviso.core.Election;
import org.proviso.core.ElectionId;
import org.proviso.core.Envelope;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.VotedElsewhere;
import org.proviso.core.Voter;
import org.proviso.core.VoterId;
import org.proviso.core.adjudication.finding.Link;
import org.proviso.core.adjudication.finding.RecordedFact;
import org.proviso.core.adjudication.finding.Records;
import org.proviso.core.rules.Ask;
import org.proviso.election.ElectionService;
import org.proviso.intake.IntakeService;
import org.proviso.review.RecordsTogether;
import org.proviso.roll.RollService;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What the office holds about an election, as the fact finder asks for it. For services; a page shows a case. */
@Service
@BetweenRooms
public class CaseRecordsService {

    private final ElectionService elections;
    private final RollService roll;
    private final IntakeService intake;
    private final LinkStore links;
    private final RecordedFacts recorded;
    private final NoticeSentStore told;

    CaseRecordsService(
            ElectionService elections,
            RollService roll,
            IntakeService intake,
            LinkStore links,
            RecordedFacts recorded,
            NoticeSentStore told) {
        this.elections = elections;
        this.roll = roll;
        this.intake = intake;
        this.links = links;
        this.recorded = recorded;
        this.told = told;
    }

    /**
     * The records of an election, with the links as the tables have them. Voters and lists are read when asked for,
     * always from the snapshot in use, so keep it no longer than one transaction. Throws
     * {@link IllegalArgumentException} where there is no such election.
     */
    @Transactional(readOnly = true)
    public Records of(ElectionId electionId) {
        return records(electionId, voter -> links.envelopesOf(electionId, voter));
    }

    /** The same with the link of each envelope as given, by envelope number. */
    @Transactional(readOnly = true)
    public Records of(ElectionId electionId, Map<EnvelopeNumber, Link> given) {
        return records(electionId, LinkedEnvelopes.of(given));
    }

    /** The same for several cases, which are read together: their envelopes, with the link of each by envelope number. */
    @Transactional(readOnly = true)
    public RecordsTogether together(
            ElectionId electionId, Collection<Envelope> envelopes, Map<EnvelopeNumber, Link> given) {
        Records each = of(electionId);
        Set<EnvelopeNumber> numbers =
                envelopes.stream().map(Envelope::envelopeNo).collect(Collectors.toSet());
        ZoneId county = each.election().zone();
        return new RecordsTogether(
                each,
                new RecordsTogether.OfEnvelopes(
                        numbers,
                        intake.cureEvidence(electionId, numbers, county),
                        recorded.of(electionId, numbers, county),
                        told.first(electionId, numbers)),
                voters(electionId, envelopes, given.values()));
    }

    private RecordsTogether.OfVoters voters(
            ElectionId electionId, Collection<Envelope> envelopes, Collection<Link> links) {
        Set<VoterId> ids = new HashSet<>();
        links.forEach(link -> Stream.ofNullable(link.voterId()).forEach(ids::add));
        Map<VoterId, Voter> voters = roll.voters(electionId, ids);
        return new RecordsTogether.OfVoters(
                ids,
                voters,
                roll.mailBallots(electionId, ids),
                roll.checkIns(electionId, ids),
                envelopesOf(electionId, ids),
                elsewhere(electionId, envelopes, voters.values()));
    }

    private Map<VoterId, List<Envelope>> envelopesOf(ElectionId electionId, Set<VoterId> voterIds) {
        Map<EnvelopeNumber, VoterId> voterOf = new HashMap<>();
        links.envelopesOf(electionId, voterIds)
                .forEach((voter, numbers) -> numbers.forEach(number -> voterOf.put(number, voter)));
        return intake.envelopes(electionId, voterOf.keySet()).stream()
                .collect(Collectors.groupingBy(envelope -> voterOf.get(envelope.envelopeNo())));
    }

    private List<VotedElsewhere> elsewhere(
            ElectionId electionId, Collection<Envelope> envelopes, Collection<Voter> voters) {
        Set<LocalDate> births = new HashSet<>();
        Set<String> licenses = new HashSet<>();
        envelopes.forEach(envelope -> {
            Stream.ofNullable(envelope.affirmation().birthDate()).forEach(births::add);
            licenses.add(envelope.affirmation().driversLicense());
        });
        voters.forEach(voter -> {
            Stream.ofNullable(voter.birthDate()).forEach(births::add);
            licenses.add(voter.driversLicense());
        });
        licenses.remove("");
        return roll.votedElsewhere(electionId, births, licenses);
    }

    private Records records(ElectionId electionId, LinkedEnvelopes linked) {
        Election election = elections
                .find(electionId)
                .orElseThrow(() -> new IllegalArgumentException("The office has no election \"" + electionId + "\"."));
        return new DatabaseRecords(
                election,
                elections.ballots(electionId),
                elections.addresses(electionId),
                roll,
                intake,
                linked,
                acts(election));
    }

    private DatabaseRecords.PersonsActs acts(Election election) {
        return new DatabaseRecords.PersonsActs() {
            @Override
            public List<RecordedFact> recorded(EnvelopeKey key) {
                return recorded.of(key.electionId(), Set.of(key.envelopeNo()), election.zone())
                        .getOrDefault(key.envelopeNo(), List.of());
            }

            @Override
            public Map<Ask, LocalDateTime> told(EnvelopeKey key) {
                return told.first(key.electionId(), Set.of(key.envelopeNo())).getOrDefault(key.envelopeNo(), Map.of());
            }
        };
    }
}
