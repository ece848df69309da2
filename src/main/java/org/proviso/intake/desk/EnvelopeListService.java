package org.proviso.intake.desk;

import java.util.List;
import java.util.Optional;
import org.proviso.access.AccessService;
import org.proviso.access.Permission;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The envelopes of an election as intake lists them, in the order they came in. */
@Service
@Transactional(readOnly = true)
public class EnvelopeListService {

    private final EnvelopeListStore envelopes;
    private final AccessService access;

    EnvelopeListService(EnvelopeListStore envelopes, AccessService access) {
        this.envelopes = envelopes;
        this.access = access;
    }

    /** Rows of a list; what is sought is the beginning of an envelope or receipt number, or empty. */
    public List<IntakeEnvelopeRow> page(
            ElectionId electionId, EnvelopeFilter filter, String sought, int offset, int limit) {
        access.demand(Permission.RECEIVE_BAGS);
        return envelopes.page(electionId, filter, sought, offset, limit);
    }

    /** How many rows that list has. */
    public int count(ElectionId electionId, EnvelopeFilter filter, String sought) {
        access.demand(Permission.RECEIVE_BAGS);
        return envelopes.count(electionId, filter, sought);
    }

    /** The line of one envelope, by its number. */
    public Optional<IntakeEnvelopeRow> line(ElectionId electionId, EnvelopeNumber envelopeNo) {
        access.demand(Permission.RECEIVE_BAGS);
        return envelopes.line(electionId, envelopeNo);
    }

    /** Envelopes received by hand, newest first. */
    public List<IntakeEnvelopeRow> lastReceived(ElectionId electionId, int limit) {
        access.demand(Permission.RECEIVE_BAGS);
        return envelopes.lastReceived(electionId, limit);
    }
}
