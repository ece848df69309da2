package org.proviso.intake;

import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.proviso.core.Envelope;
import org.proviso.core.Transmittal;
import org.proviso.core.adjudication.CureEvidence;
import org.proviso.core.chain.Salt;
import org.proviso.election.ElectionLoaded;
import org.springframework.context.event.EventListener;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** Envelopes and the transmittals they came with. For services; a page shows an envelope in a case. */
@Service
public class IntakeService {

    private final TransmittalStore transmittals;
    private final EnvelopeStore envelopes;
    private final AffirmationStore affirmations;
    private final CureStore cures;

    IntakeService(
            TransmittalStore transmittals, EnvelopeStore envelopes, AffirmationStore affirmations, CureStore cures) {
        this.transmittals = transmittals;
        this.envelopes = envelopes;
        this.affirmations = affirmations;
        this.cures = cures;
    }

    /** Takes what a folder says came in, in the transaction that loads the election. */
    @EventListener
    @Order(ElectionLoaded.INTAKE_TAKES)
    @Transactional(propagation = Propagation.MANDATORY)
    public void takeEnvelopes(ElectionLoaded loaded) {
        String id = loaded.electionId();
        transmittals.insert(id, loaded.folder().transmittals());
        envelopes.insert(id, loaded.folder().envelopes());
        affirmations.insert(id, loaded.folder().envelopes());
    }

    /** Every transmittal in the order of its file. */
    @Transactional(readOnly = true)
    public List<Transmittal> transmittals(String electionId) {
        return transmittals.all(electionId);
    }

    /** Every envelope in the order of its file. */
    @Transactional(readOnly = true)
    public List<Envelope> envelopes(String electionId) {
        return envelopes.all(electionId, affirmations.all(electionId));
    }

    @Transactional(readOnly = true)
    public Optional<Envelope> envelope(String electionId, String envelopeNo) {
        return envelopes(electionId, Set.of(envelopeNo)).stream().findFirst();
    }

    /** Those of these envelopes that there are, in the order of their file. */
    @Transactional(readOnly = true)
    public List<Envelope> envelopes(String electionId, Set<String> envelopeNos) {
        if (envelopeNos.isEmpty()) {
            return List.of();
        }
        Map<String, Envelope.Affirmation> said = affirmations.of(electionId, envelopeNos);
        return said.isEmpty() ? List.of() : envelopes.find(electionId, said);
    }

    /** The envelope, held for this transaction; refused by name where the office has none of that number. */
    @Transactional(propagation = Propagation.MANDATORY)
    Envelope demandLocked(String electionId, String envelopeNo) {
        if (!envelopes.lock(electionId, envelopeNo)) {
            throw new IntakeRefusedException("The office has no envelope \"" + envelopeNo + "\" in this election.");
        }
        return envelope(electionId, envelopeNo).orElseThrow();
    }

    /** What the voter of an envelope brought, in the order of its keying; moments are on the county's clock. */
    @Transactional(readOnly = true)
    public List<CureEvidence> cureEvidence(String electionId, String envelopeNo, ZoneId county) {
        return cures.of(electionId, envelopeNo, county);
    }

    /** The salt under which the ledger names what must not be read of this envelope; empty after a purge. */
    @Transactional(readOnly = true)
    public Optional<Salt> salt(String electionId, String envelopeNo) {
        return envelopes.salt(electionId, envelopeNo);
    }
}
