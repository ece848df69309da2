package org.proviso.intake.keying;

import jakarta.validation.Valid;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proviso.access.AccessService;
import org.proviso.access.OfficeUser;
import org.proviso.access.Permission;
import org.proviso.core.ElectionId;
import org.proviso.core.Envelope;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.chain.CanonicalJson;
import org.proviso.intake.AffirmationStore;
import org.proviso.intake.EnvelopeStore;
import org.proviso.intake.IntakeRefusedException;
import org.proviso.intake.IntakeService;
import org.proviso.intake.UnkeyedEnvelope;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.validation.annotation.Validated;

/**
 * Keying what an envelope says. What somebody types is kept as a draft of that person, whom nobody else's draft can
 * influence. The first to hand in fills the envelope; whoever hands in after that keyed it a second time and is told
 * where the two differ.
 */
@Service
@Validated
public class KeyingService {

    private final IntakeService intake;
    private final EnvelopeStore envelopes;
    private final AffirmationStore affirmations;
    private final KeyingDraftStore drafts;
    private final AccessService access;
    private final LedgerService ledger;
    private final ApplicationEventPublisher rooms;

    KeyingService(
            IntakeService intake,
            EnvelopeStore envelopes,
            AffirmationStore affirmations,
            KeyingDraftStore drafts,
            AccessService access,
            LedgerService ledger,
            ApplicationEventPublisher rooms) {
        this.intake = intake;
        this.envelopes = envelopes;
        this.affirmations = affirmations;
        this.drafts = drafts;
        this.access = access;
        this.ledger = ledger;
        this.rooms = rooms;
    }

    /** The numbers of envelopes of which something is not yet keyed, in the order they came in. */
    @Transactional(readOnly = true)
    public List<EnvelopeNumber> waiting(ElectionId electionId) {
        access.demand(Permission.KEY_ENVELOPES);
        return envelopes.notYetKeyed(electionId);
    }

    /** The draft of whoever is signed in. */
    @Transactional(readOnly = true)
    public Optional<KeyingDraft> draft(ElectionId electionId, EnvelopeNumber envelopeNo) {
        OfficeUser keyer = access.demand(Permission.KEY_ENVELOPES);
        return drafts.find(electionId, envelopeNo, keyer.userName());
    }

    /**
     * Saves what was typed so far and gives the draft's new version. A save from an old page is refused with
     * {@link org.springframework.dao.OptimisticLockingFailureException}; nothing is handed in.
     */
    @Transactional
    public int saveDraft(@Valid SaveKeyingDraft command) {
        OfficeUser keyer = access.demand(Permission.KEY_ENVELOPES);
        intake.demandKnown(command.electionId(), command.envelopeNo());
        refuseHandedIn(command.electionId(), command.envelopeNo(), keyer);
        KeyingDraft draft = new KeyingDraft(command.envelopeNo(), command.boxes(), false, command.version());
        return drafts.save(command.electionId(), keyer.userName(), draft);
    }

    /**
     * Hands in what an envelope says. Where it was keyed before and reads otherwise, the differences are the answer
     * and nothing of the envelope changes, until they are settled.
     */
    @Transactional
    public KeyingResult handIn(@Valid FinishKeying command) {
        OfficeUser keyer = access.demand(Permission.KEY_ENVELOPES);
        Envelope before = intake.demandLocked(command.electionId(), command.envelopeNo());
        refuseHandedIn(command.electionId(), command.envelopeNo(), keyer);
        Envelope.Affirmation said = command.affirmation().affirmation();
        Envelope.Handling seen = command.handling().handling(before.handling().signatureImage());
        List<BoxDifference> differences =
                UnkeyedEnvelope.isAllOf(before) ? List.of() : EnvelopeBoxes.differences(before, said, seen);
        int version = envelopes.version(command.electionId(), command.envelopeNo());
        if (!differences.isEmpty() && !Integer.valueOf(version).equals(command.resolves())) {
            drafts.noteDiffering(command.electionId(), command.envelopeNo(), keyer.userName(), differences.size());
            return new KeyingResult.KeyedTwice(differences, version);
        }
        Map<String, String> boxes = EnvelopeBoxes.of(said, seen);
        drafts.save(
                command.electionId(),
                keyer.userName(),
                new KeyingDraft(command.envelopeNo(), boxes, true, command.draftVersion()));
        boolean changes = !differences.isEmpty() || UnkeyedEnvelope.isSomeOf(before);
        if (changes) {
            envelopes.change(command.electionId(), command.envelopeNo(), version, seen);
            affirmations.change(command.electionId(), command.envelopeNo(), said);
            rooms.publishEvent(new EnvelopeKeyed(command.electionId(), command.envelopeNo()));
        }
        enter(command, keyer, act(before, changes), differences.size(), boxes);
        return new KeyingResult.Keyed(changes);
    }

    private static String act(Envelope before, boolean changes) {
        if (UnkeyedEnvelope.isSomeOf(before)) {
            return "envelope_keyed";
        }
        return changes ? "envelope_keyed_otherwise" : "envelope_keyed_alike";
    }

    private void refuseHandedIn(ElectionId electionId, EnvelopeNumber envelopeNo, OfficeUser keyer) {
        if (drafts.find(electionId, envelopeNo, keyer.userName())
                .filter(KeyingDraft::finished)
                .isPresent()) {
            throw new IntakeRefusedException(
                    "You handed in " + envelopeNo + " already. To have it keyed a second time, ask somebody else.");
        }
    }

    /** The ledger has how many boxes changed, and what was keyed as a salted hash only. */
    private void enter(FinishKeying command, OfficeUser keyer, String act, int differences, Map<String, String> boxes) {
        Map<String, Object> payload = new LinkedHashMap<>();
        payload.put("boxes_changed", differences);
        intake.salt(command.electionId(), command.envelopeNo())
                .ifPresent(salt -> payload.put("keyed", salt.hash(CanonicalJson.of(boxes))));
        ledger.record(
                LedgerChain.of(command.electionId()),
                keyer.actor(),
                act,
                command.envelopeNo().value(),
                payload);
    }
}
