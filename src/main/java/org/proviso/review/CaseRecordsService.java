package org.proviso.review;

import java.util.Map;
import org.proviso.core.Election;
import org.proviso.core.adjudication.Link;
import org.proviso.core.adjudication.Records;
import org.proviso.election.ElectionService;
import org.proviso.intake.IntakeService;
import org.proviso.roll.RollService;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What the office holds about an election, as the fact finder asks for it. For services; a page shows a case. */
@Service
public class CaseRecordsService {

    private final ElectionService elections;
    private final RollService roll;
    private final IntakeService intake;

    CaseRecordsService(ElectionService elections, RollService roll, IntakeService intake) {
        this.elections = elections;
        this.roll = roll;
        this.intake = intake;
    }

    /**
     * The records of an election with the link of each envelope, by envelope number. Ballots and streets, which never
     * change, are read at once; voters and lists when asked for, always from the snapshot in use, so keep it no longer
     * than one transaction. Thread-safe. Throws {@link IllegalArgumentException} where there is no such election.
     */
    @Transactional(readOnly = true)
    public Records of(String electionId, Map<String, Link> links) {
        Election election = elections
                .find(electionId)
                .orElseThrow(() -> new IllegalArgumentException("The office has no election \"" + electionId + "\"."));
        return new DatabaseRecords(
                election,
                elections.ballots(electionId),
                elections.addresses(electionId),
                roll,
                intake,
                LinkedEnvelopes.of(links));
    }
}
