package org.proviso.intake.correction;

import jakarta.validation.Valid;
import java.time.Clock;
import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.proviso.access.AccessService;
import org.proviso.access.ActDoor;
import org.proviso.access.OfficeUser;
import org.proviso.access.Permission;
import org.proviso.access.StaffList;
import org.proviso.core.ElectionId;
import org.proviso.core.Envelope;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.chain.CanonicalJson;
import org.proviso.election.ElectionService;
import org.proviso.intake.AffirmationStore;
import org.proviso.intake.EnvelopeStore;
import org.proviso.intake.IntakeService;
import org.proviso.intake.ReceivingChoices;
import org.proviso.intake.StampWords;
import org.proviso.intake.UnkeyedEnvelope;
import org.proviso.intake.correction.CorrectionStore.Row;
import org.proviso.intake.keying.EnvelopeBoxes;
import org.proviso.intake.keying.KeyedAffirmation;
import org.proviso.intake.keying.KeyedHandling;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerLine;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.validation.annotation.Validated;

/**
 * Corrects what was received and keyed of an envelope, with the reason; the old and the new text of each box are kept. The
 * case is then assessed anew. What the case rests on when it is settled is not changed under it: it is reopened first.
 */
@Service
@Validated
public class EnvelopeCorrectionService {

    private final CorrectionStore corrections;
    private final EnvelopeStore envelopes;
    private final AffirmationStore affirmations;
    private final IntakeService intake;
    private final ElectionService elections;
    private final CorrectionGate cases;
    private final StaffList staff;
    private final AccessService access;
    private final ActDoor door;
    private final Clock clock;

    EnvelopeCorrectionService(
            CorrectionStore corrections,
            EnvelopeStore envelopes,
            AffirmationStore affirmations,
            IntakeService intake,
            ElectionService elections,
            CorrectionGate cases,
            StaffList staff,
            AccessService access,
            ActDoor door,
            Clock clock) {
        this.corrections = corrections;
        this.envelopes = envelopes;
        this.affirmations = affirmations;
        this.intake = intake;
        this.elections = elections;
        this.cases = cases;
        this.staff = staff;
        this.access = access;
        this.door = door;
        this.clock = clock;
    }

    /** An envelope before and after a correction, with the boxes in which they differ. */
    private record Corrected(Envelope before, Envelope after, Map<String, String> was, Map<String, String> became) {

        static Corrected of(Envelope before, Envelope after) {
            Map<String, String> was = new TreeMap<>(boxes(before));
            Map<String, String> became = new TreeMap<>(boxes(after));
            was.entrySet().removeIf(box -> became.remove(box.getKey(), box.getValue()));
            return new Corrected(before, after, was, became);
        }

        private static Map<String, String> boxes(Envelope envelope) {
            Map<String, String> boxes = new LinkedHashMap<>(CastBoxes.of(envelope.cast()));
            boxes.putAll(EnvelopeBoxes.of(envelope.affirmation(), envelope.handling()));
            return boxes;
        }

        boolean changes(String box) {
            return became.containsKey(box);
        }
    }

    /** An envelope to correct, for whoever has its paper in hand; empty where the office has none of that number. */
    @Transactional(readOnly = true)
    public Optional<CorrectableEnvelope> find(ElectionId electionId, EnvelopeNumber envelopeNo) {
        access.demand(Permission.KEY_ENVELOPES);
        EnvelopeKey key = new EnvelopeKey(electionId, envelopeNo);
        return intake.envelope(electionId, envelopeNo)
                .map(envelope -> new CorrectableEnvelope(
                        envelope,
                        envelopes.version(electionId, envelopeNo),
                        UnkeyedEnvelope.isSomeOf(envelope)
                                ? Map.of()
                                : EnvelopeBoxes.read(envelope.affirmation(), envelope.handling()),
                        elections
                                .closed(electionId)
                                .or(() -> cases.refusal(key))
                                .map(Refusal::words)
                                .orElse(""),
                        corrections.of(electionId, envelopeNo).stream()
                                .map(this::shown)
                                .toList()));
    }

    private EnvelopeCorrection shown(Row row) {
        return new EnvelopeCorrection(
                row.number(),
                row.was(),
                row.became(),
                row.because(),
                staff.user(row.by()).map(OfficeUser::fullName).orElse(row.by().value()));
    }

    /**
     * Writes an envelope as it should have been received and keyed. Refused where nothing changes, the case is settled, the
     * voting location or ballot style is not one of the election's, or the ballot cannot have been cast then. A correction
     * of another version than the one there now is an {@link org.springframework.dao.OptimisticLockingFailureException}.
     */
    @Transactional
    public ActResult<EnvelopeNumber> correct(@Valid CorrectEnvelope typed) {
        ElectionId id = typed.electionId();
        EnvelopeKey key = new EnvelopeKey(id, typed.envelopeNo());
        ActDoor.Permitted clerk = door.demand(Permission.KEY_ENVELOPES);
        return clerk.lock(() -> locked(typed))
                .refuse(corrected -> elections.closed(id))
                .refuse(corrected -> asSeen(typed))
                .refuse(corrected -> cases.refusal(key))
                .refuse(corrected -> notKeyedYet(typed, corrected))
                .refuse(EnvelopeCorrectionService::nothingToCorrect)
                .refuse(corrected -> notListed(id, corrected))
                .refuse(corrected -> notPossible(id, corrected))
                .save(corrected -> {
                    save(typed, corrected, clerk.user());
                    return corrected;
                })
                .tell(corrected -> new EnvelopeCorrected(id, typed.envelopeNo(), corrected.before()))
                .record(corrected -> line(typed, corrected))
                .map(corrected -> typed.envelopeNo());
    }

    private Corrected locked(CorrectEnvelope typed) {
        ElectionId id = typed.electionId();
        Envelope before = intake.demandLocked(id, typed.envelopeNo());
        cases.hold(new EnvelopeKey(id, typed.envelopeNo()));
        KeyedAffirmation said = typed.affirmation();
        KeyedHandling seen = typed.handling();
        Envelope after = new Envelope(
                before.envelopeNo(),
                before.receiptNo(),
                before.source(),
                typed.cast().cast(),
                said == null ? before.affirmation() : said.affirmation(),
                seen == null
                        ? before.handling()
                        : seen.handling(before.handling().signatureImage()));
        return Corrected.of(before, after);
    }

    private Optional<Refusal> asSeen(CorrectEnvelope typed) {
        if (envelopes.version(typed.electionId(), typed.envelopeNo()) != typed.version()) {
            throw CorrectionStore.stale(typed.envelopeNo());
        }
        return Optional.empty();
    }

    private static Optional<Refusal> notKeyedYet(CorrectEnvelope typed, Corrected corrected) {
        boolean corrects = typed.affirmation() != null || typed.handling() != null;
        return Refusal.when(
                corrects && UnkeyedEnvelope.isSomeOf(corrected.before()),
                Why.NOT_IN_THIS_STATE,
                "Finish keying " + typed.envelopeNo() + " first.");
    }

    private static Optional<Refusal> nothingToCorrect(Corrected corrected) {
        return Refusal.when(
                corrected.became().isEmpty(), Why.NOTHING_NEW, "Nothing was changed. Change a field, or cancel.");
    }

    private Optional<Refusal> notListed(ElectionId id, Corrected corrected) {
        Envelope.Cast cast = corrected.after().cast();
        boolean fromHere = corrected.after().source() == Envelope.Source.POLL;
        if (fromHere
                && corrected.changes("voting_location")
                && !choices(id).votingLocations().contains(cast.votingLocation())) {
            return Optional.of(Refusal.at(
                    "votingLocation",
                    Why.MISTYPED,
                    "This election has no voting location \"" + cast.votingLocation() + "\". Choose one of the list."));
        }
        String style = cast.ballotStyle();
        return corrected.changes("ballot_style_cast")
                        && !style.isEmpty()
                        && elections.ballots(id).style(style).isEmpty()
                ? Optional.of(Refusal.at(
                        "ballotStyle", Why.NO_SUCH_STYLE, "This election has no ballot style " + style + "."))
                : Optional.empty();
    }

    private ReceivingChoices choices(ElectionId id) {
        return ReceivingChoices.of(elections.ballots(id), envelopes.votingLocations(id));
    }

    private Optional<Refusal> notPossible(ElectionId id, Corrected corrected) {
        LocalDateTime cast = corrected.after().cast().at();
        if (cast == null || !corrected.changes("cast_at")) {
            return Optional.empty();
        }
        LocalDateTime now = LocalDateTime.ofInstant(clock.instant(), elections.zone(id));
        if (cast.isAfter(now)) {
            return Optional.of(
                    Refusal.at("castAt", Why.MOMENT_NOT_POSSIBLE, "The ballot cannot have been cast later than now."));
        }
        return corrections
                .receivedAt(id, corrected.after().envelopeNo())
                .filter(stamp -> stamp.isBefore(cast))
                .map(stamp -> Refusal.at(
                        "castAt", Why.MOMENT_NOT_POSSIBLE, StampWords.earlierThan("the ballot", stamp, cast)));
    }

    private void save(CorrectEnvelope typed, Corrected corrected, OfficeUser by) {
        ElectionId id = typed.electionId();
        EnvelopeNumber number = typed.envelopeNo();
        corrections.change(id, number, typed.version(), corrected.after().cast());
        if (!corrected.after().handling().equals(corrected.before().handling())) {
            envelopes.change(id, number, typed.version() + 1, corrected.after().handling());
        }
        if (!corrected.after().affirmation().equals(corrected.before().affirmation())) {
            affirmations.change(id, number, corrected.after().affirmation());
        }
        corrections.insert(
                id,
                new Row(
                        number,
                        corrections.nextNumber(id, number),
                        corrected.was(),
                        corrected.became(),
                        typed.because().strip(),
                        by.userName()),
                clock.instant());
    }

    /**
     * The ledger has which boxes changed, where the envelope was cast and on which ballot as when it was received, and
     * every other text, the old and the new, in a salted hash only.
     */
    private LedgerLine line(CorrectEnvelope typed, Corrected corrected) {
        Map<String, Object> payload = new LinkedHashMap<>();
        payload.put("boxes", List.copyOf(corrected.became().keySet()));
        put(payload, "voting_location", corrected.became().get("voting_location"));
        put(payload, "style", corrected.became().get("ballot_style_cast"));
        intake.salt(typed.electionId(), typed.envelopeNo()).ifPresent(salt -> {
            payload.put("was", salt.hash(CanonicalJson.of(corrected.was())));
            payload.put("became", salt.hash(CanonicalJson.of(corrected.became())));
            payload.put("because", salt.hash(typed.because().strip()));
        });
        return LedgerLine.of(
                LedgerChain.of(typed.electionId()),
                "envelope_corrected",
                typed.envelopeNo().value(),
                payload);
    }

    private static void put(Map<String, Object> payload, String name, @Nullable String text) {
        if (text != null) {
            payload.put(name, text);
        }
    }
}
