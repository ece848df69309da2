package org.proviso.intake.keying;

import jakarta.validation.Valid;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.proviso.access.AccessService;
import org.proviso.access.ActDoor;
import org.proviso.access.OfficeUser;
import org.proviso.access.Permission;
import org.proviso.core.ElectionId;
import org.proviso.core.Envelope;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.core.chain.CanonicalJson;
import org.proviso.election.ElectionService;
import org.proviso.intake.AffirmationStore;
import org.proviso.intake.EnvelopeStore;
import org.proviso.intake.IntakeService;
import org.proviso.intake.UnkeyedEnvelope;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerLine;
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
    private final ActDoor door;

    private final ElectionService elections;

    KeyingService(
            IntakeService intake,
            EnvelopeStore envelopes,
            AffirmationStore affirmations,
            KeyingDraftStore drafts,
            ElectionService elections,
            AccessService access,
            ActDoor door) {
        this.elections = elections;
        this.intake = intake;
        this.envelopes = envelopes;
        this.affirmations = affirmations;
        this.drafts = drafts;
        this.access = access;
        this.door = door;
    }

    /** What handing in came to; without an act where only the differences were told. */
    private record HandedIn(KeyingResult result, @Nullable String act, int differences, Map<String, String> boxes) {

        boolean changesEnvelope() {
            return result instanceof KeyingResult.Keyed keyed && keyed.changed();
        }
    }

    /** The numbers of envelopes of which something is not yet keyed, in the order they came in. */
    @Transactional(readOnly = true)
    public List<EnvelopeNumber> waiting(ElectionId electionId) {
        access.demand(Permission.KEY_ENVELOPES);
        return envelopes.notYetKeyed(electionId);
    }

    /** The envelope as it is so far, for whoever has its paper in hand. */
    @Transactional(readOnly = true)
    public Optional<Envelope> envelope(ElectionId electionId, EnvelopeNumber envelopeNo) {
        access.demand(Permission.KEY_ENVELOPES);
        return intake.envelope(electionId, envelopeNo);
    }

    /** The draft of whoever is signed in. */
    @Transactional(readOnly = true)
    public Optional<KeyingDraft> draft(ElectionId electionId, EnvelopeNumber envelopeNo) {
        OfficeUser keyer = access.demand(Permission.KEY_ENVELOPES);
        return drafts.find(electionId, envelopeNo, keyer.userName());
    }

    /**
     * Saves what was typed so far and gives the draft's new version; nothing is handed in. A save from an old page is an
     * {@link org.springframework.dao.OptimisticLockingFailureException}.
     */
    @Transactional
    public ActResult<Integer> saveDraft(@Valid SaveKeyingDraft command) {
        ActDoor.Permitted keyer = door.demand(Permission.KEY_ENVELOPES);
        return keyer.lock(() -> {
                    intake.demandKnown(command.electionId(), command.envelopeNo());
                    return keyer.user().userName();
                })
                .refuse(userName -> elections.closed(command.electionId()))
                .refuse(userName -> handedInAlready(command.electionId(), command.envelopeNo(), userName))
                .save(userName -> drafts.save(
                        command.electionId(),
                        userName,
                        new KeyingDraft(command.envelopeNo(), command.boxes(), false, command.version())))
                .withoutEntry();
    }

    /**
     * Hands in what an envelope says. Where it was keyed before and reads otherwise, the differences are the answer
     * and nothing of the envelope changes, until they are settled.
     */
    @Transactional
    public ActResult<KeyingResult> handIn(@Valid FinishKeying command) {
        ActDoor.Permitted keyer = door.demand(Permission.KEY_ENVELOPES);
        UserName userName = keyer.user().userName();
        return keyer.lock(() -> intake.demandLocked(command.electionId(), command.envelopeNo()))
                .refuse(before -> elections.closed(command.electionId()))
                .refuse(before -> handedInAlready(command.electionId(), command.envelopeNo(), userName))
                .save(before -> handIn(command, userName, before))
                .tellIfAny(done -> done.changesEnvelope()
                        ? Optional.of(new EnvelopeKeyed(command.electionId(), command.envelopeNo()))
                        : Optional.empty())
                .recordIfAny(done -> Optional.ofNullable(done.act()).map(act -> line(command, act, done)))
                .map(HandedIn::result);
    }

    private HandedIn handIn(FinishKeying command, UserName userName, Envelope before) {
        ElectionId id = command.electionId();
        Envelope.Affirmation said = command.affirmation().affirmation();
        Envelope.Handling seen = command.handling().handling(before.handling().signatureImage());
        List<BoxDifference> differences =
                UnkeyedEnvelope.isAllOf(before) ? List.of() : EnvelopeBoxes.differences(before, said, seen);
        int version = envelopes.version(id, command.envelopeNo());
        if (!differences.isEmpty() && !Integer.valueOf(version).equals(command.resolves())) {
            drafts.noteDiffering(id, command.envelopeNo(), userName, differences.size());
            return new HandedIn(new KeyingResult.KeyedTwice(differences, version), null, 0, Map.of());
        }
        Map<String, String> boxes = EnvelopeBoxes.of(said, seen);
        drafts.save(id, userName, new KeyingDraft(command.envelopeNo(), boxes, true, command.draftVersion()));
        boolean changes = !differences.isEmpty() || UnkeyedEnvelope.isSomeOf(before);
        if (changes) {
            envelopes.change(id, command.envelopeNo(), version, seen);
            affirmations.change(id, command.envelopeNo(), said);
        }
        return new HandedIn(new KeyingResult.Keyed(changes), act(before, changes), differences.size(), boxes);
    }

    private static String act(Envelope before, boolean changes) {
        if (UnkeyedEnvelope.isSomeOf(before)) {
            return "envelope_keyed";
        }
        return changes ? "envelope_keyed_otherwise" : "envelope_keyed_alike";
    }

    private Optional<Refusal> handedInAlready(ElectionId electionId, EnvelopeNumber envelopeNo, UserName userName) {
        return Refusal.when(
                drafts.find(electionId, envelopeNo, userName)
                        .filter(KeyingDraft::finished)
                        .isPresent(),
                Refusal.Why.KEYED_BY_YOU,
                "You handed in " + envelopeNo + " already. Ask somebody else to key it a second time.");
    }

    /** The ledger has how many boxes changed, and what was keyed as a salted hash only. */
    private LedgerLine line(FinishKeying command, String act, HandedIn done) {
        Map<String, Object> payload = new LinkedHashMap<>();
        payload.put("boxes_changed", done.differences());
        intake.salt(command.electionId(), command.envelopeNo())
                .ifPresent(salt -> payload.put("keyed", salt.hash(CanonicalJson.of(done.boxes()))));
        return LedgerLine.of(
                LedgerChain.of(command.electionId()), act, command.envelopeNo().value(), payload);
    }
}
