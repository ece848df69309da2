package org.proviso.review.facts;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import org.proviso.core.Election;
import org.proviso.core.adjudication.finding.Link;
import org.proviso.core.adjudication.finding.RecordedFact;
import org.proviso.core.adjudication.finding.Records;
import org.proviso.core.rules.Ask;
import org.proviso.election.ElectionService;
import org.proviso.intake.IntakeService;
import org.proviso.review.CaseKey;
import org.proviso.roll.RollService;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What the office holds about an election, as the fact finder asks for it. For services; a page shows a case. */
@Service
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
    public Records of(String electionId) {
        return records(electionId, voter -> links.envelopesOf(electionId, voter));
    }

    /** The same with the link of each envelope as given, by envelope number. */
    @Transactional(readOnly = true)
    public Records of(String electionId, Map<String, Link> given) {
        return records(electionId, LinkedEnvelopes.of(given));
    }

    private Records records(String electionId, LinkedEnvelopes linked) {
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
            public List<RecordedFact> recorded(CaseKey key) {
                return recorded.of(key, election.zone());
            }

            @Override
            public Map<Ask, LocalDateTime> told(CaseKey key) {
                return told.first(key);
            }
        };
    }
}
