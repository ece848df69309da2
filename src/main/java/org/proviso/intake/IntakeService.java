package org.proviso.intake;

import java.time.ZoneId;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.proviso.core.BetweenRooms;
import org.proviso.core.ElectionId;
import org.proviso.core.Envelope;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.Transmittal;
import org.proviso.core.adjudication.finding.CureEvidence;
import org.proviso.core.chain.Salt;
import org.proviso.election.ElectionLoaded;
import org.proviso.files.election.SignatureFiles;
import org.springframework.context.event.EventListener;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** Envelopes and the transmittals they came with. For services; a page shows an envelope in a case. */
@BetweenRooms
@Service
public class IntakeService {

    private final TransmittalStore transmittals;
    private final EnvelopeStore envelopes;
    private final AffirmationStore affirmations;
    private final CureStore cures;
    private final ImageStore images;

    IntakeService(
            TransmittalStore transmittals,
            EnvelopeStore envelopes,
            AffirmationStore affirmations,
            CureStore cures,
            ImageStore images) {
        this.transmittals = transmittals;
        this.envelopes = envelopes;
        this.affirmations = affirmations;
        this.cures = cures;
        this.images = images;
    }

    /**
     * Takes what a folder says came in, in the transaction that loads the election, with the pictures of signatures;
     * one that is missing or is no picture is an {@link org.proviso.files.InputException}, and nothing was loaded.
     */
    @EventListener
    @Order(ElectionLoaded.INTAKE_TAKES)
    @Transactional(propagation = Propagation.MANDATORY)
    public void takeEnvelopes(ElectionLoaded loaded) {
        ElectionId id = loaded.electionId();
        SignatureFiles signatures =
                SignatureFiles.of(loaded.folder().folder(), loaded.folder().envelopes());
        transmittals.insert(id, loaded.folder().transmittals());
        envelopes.insert(id, loaded.folder().envelopes());
        affirmations.insert(id, loaded.folder().envelopes());
        images.insert(id, signatures);
    }

    /** Every transmittal in the order of its file. */
    @Transactional(readOnly = true)
    public List<Transmittal> transmittals(ElectionId electionId) {
        return transmittals.all(electionId);
    }

    /** The transmittals in the order they came in, with the versions that corrections need. */
    @Transactional(readOnly = true)
    public List<RecordedTransmittal> recordedTransmittals(ElectionId electionId) {
        return transmittals.recorded(electionId);
    }

    /** Every envelope in the order of its file. */
    @Transactional(readOnly = true)
    public List<Envelope> envelopes(ElectionId electionId) {
        return envelopes.all(electionId, affirmations.all(electionId));
    }

    /** Every envelope in the order of its file, without what its voter wrote: for figures. */
    @Transactional(readOnly = true)
    public List<CastEnvelope> castEnvelopes(ElectionId electionId) {
        return envelopes.cast(electionId);
    }

    @Transactional(readOnly = true)
    public Optional<Envelope> envelope(ElectionId electionId, EnvelopeNumber envelopeNo) {
        return envelopes(electionId, Set.of(envelopeNo)).stream().findFirst();
    }

    /** Those of these envelopes that there are, in the order of their file. */
    @Transactional(readOnly = true)
    public List<Envelope> envelopes(ElectionId electionId, Set<EnvelopeNumber> envelopeNos) {
        if (envelopeNos.isEmpty()) {
            return List.of();
        }
        Map<EnvelopeNumber, Envelope.Affirmation> said = affirmations.of(electionId, envelopeNos);
        return said.isEmpty() ? List.of() : envelopes.find(electionId, said);
    }

    /** The envelope, held for this transaction; throws {@link IllegalArgumentException} where the office has none of that number. */
    @Transactional(propagation = Propagation.MANDATORY)
    public Envelope demandLocked(ElectionId electionId, EnvelopeNumber envelopeNo) {
        if (!envelopes.lock(electionId, envelopeNo)) {
            throw none(envelopeNo);
        }
        return envelope(electionId, envelopeNo).orElseThrow();
    }

    @Transactional(propagation = Propagation.MANDATORY)
    public void demandKnown(ElectionId electionId, EnvelopeNumber envelopeNo) {
        if (envelopes.known(electionId, Set.of(envelopeNo)).isEmpty()) {
            throw none(envelopeNo);
        }
    }

    private static IllegalArgumentException none(EnvelopeNumber envelopeNo) {
        return new IllegalArgumentException("The office has no envelope \"" + envelopeNo + "\" in this election.");
    }

    /** What the voter of an envelope brought, in the order of its keying; moments are on the county's clock. */
    @Transactional(readOnly = true)
    public List<CureEvidence> cureEvidence(ElectionId electionId, EnvelopeNumber envelopeNo, ZoneId county) {
        return cures.of(electionId, envelopeNo, county);
    }

    /** The same of several envelopes, by envelope number; one of which nothing was brought is not in it. */
    @Transactional(readOnly = true)
    public Map<EnvelopeNumber, List<CureEvidence>> cureEvidence(
            ElectionId electionId, Collection<EnvelopeNumber> envelopeNos, ZoneId county) {
        return cures.of(electionId, envelopeNos, county);
    }

    /** The salt under which the ledger names what must not be read of this envelope; empty after a purge. */
    @Transactional(readOnly = true)
    public Optional<Salt> salt(ElectionId electionId, EnvelopeNumber envelopeNo) {
        return envelopes.salt(electionId, envelopeNo);
    }

    /** The same of several envelopes, by envelope number; one without a salt is not in it. */
    @Transactional(readOnly = true)
    public Map<EnvelopeNumber, Salt> salts(ElectionId electionId, Collection<EnvelopeNumber> envelopeNos) {
        return envelopes.salts(electionId, envelopeNos);
    }
}
