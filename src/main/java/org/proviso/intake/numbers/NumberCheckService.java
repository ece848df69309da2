package org.proviso.intake.numbers;

import jakarta.validation.Valid;
import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.proviso.access.AccessService;
import org.proviso.access.ActDoor;
import org.proviso.access.Permission;
import org.proviso.core.ElectionId;
import org.proviso.core.Envelope;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.Key;
import org.proviso.core.ReceiptNumber;
import org.proviso.core.UserName;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.election.ElectionService;
import org.proviso.intake.IntakeService;
import org.proviso.intake.ReceiptOwners;
import org.proviso.intake.ReceiptStore;
import org.proviso.intake.numbers.MarkedEnvelopes.Marked;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerLine;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.validation.annotation.Validated;

/** Envelopes whose numbers are missing or on others: the list of them, and how a person settles each. */
@Service
@Validated
public class NumberCheckService {

    private final MarkedEnvelopes marked;
    private final NumberCheckStore checks;
    private final ReceiptStore receipts;
    private final ReceiptOwners owners;
    private final IntakeService intake;
    private final ElectionService elections;
    private final AccessService access;
    private final ActDoor door;
    private final Clock clock;

    NumberCheckService(
            MarkedEnvelopes marked,
            NumberCheckStore checks,
            ReceiptStore receipts,
            ReceiptOwners owners,
            IntakeService intake,
            ElectionService elections,
            AccessService access,
            ActDoor door,
            Clock clock) {
        this.marked = marked;
        this.checks = checks;
        this.receipts = receipts;
        this.owners = owners;
        this.intake = intake;
        this.elections = elections;
        this.access = access;
        this.door = door;
        this.clock = clock;
    }

    /** A correction of an envelope's receipt number, and the envelopes that had the one before. */
    private record Correction(
            CorrectReceipt command, @Nullable ReceiptNumber before, List<Marked> marks) {}

    /** Every marked envelope, settled or not, in the order they came in. */
    @Transactional(readOnly = true)
    public List<MarkedEnvelope> all(ElectionId electionId) {
        access.demand(Permission.KEY_ENVELOPES);
        return marked.all(electionId).stream().map(Marked::envelope).toList();
    }

    /**
     * Confirms that a number is as the paper says; it holds for every envelope that has it now. A confirmation of what no
     * longer stands so is an {@link OptimisticLockingFailureException}.
     */
    @Transactional
    public ActResult<MarkedEnvelope> confirm(@Valid ConfirmNumber command) {
        ElectionId id = command.electionId();
        ActDoor.Permitted clerk = door.demand(Permission.KEY_ENVELOPES);
        return clerk.lock(() -> intake.demandLocked(id, command.envelopeNo()))
                .refuse(envelope -> elections.closed(id))
                .save(envelope -> {
                    Marked seen = seen(command);
                    keep(
                            id,
                            seen,
                            NumberCheckStore.CONFIRMED,
                            command.because(),
                            clerk.user().userName());
                    return seen;
                })
                .record(seen -> line(
                        id, "number_confirmed", seen, salted(id, command.envelopeNo(), "because", command.because())))
                .map(Marked::envelope);
    }

    private Marked seen(ConfirmNumber command) {
        return marked.all(command.electionId()).stream()
                .filter(now -> now.envelope().envelopeNo().equals(command.envelopeNo())
                        && now.envelope().mark() == command.mark()
                        && now.envelope().alsoOn().equals(command.alsoOn()))
                .findFirst()
                .orElseThrow(() -> new OptimisticLockingFailureException(
                        "The numbers of " + command.envelopeNo() + " have changed since you opened the page."));
    }

    /**
     * Writes the receipt number as it should have been entered; refused where it has a slip, is the same as before, or is
     * on another envelope and nobody has seen that. Only what is marked is corrected here.
     */
    @Transactional
    public ActResult<EnvelopeNumber> correct(@Valid CorrectReceipt typed) {
        ElectionId id = typed.electionId();
        ActDoor.Permitted clerk = door.demand(Permission.KEY_ENVELOPES);
        return clerk.lock(() -> correction(typed))
                .refuse(correction -> elections.closed(id))
                .refuse(correction -> owners.slip(id, correction.command().receiptNo()))
                .refuse(NumberCheckService::nothingToCorrect)
                .refuse(correction -> typed.sharesReceipt()
                        ? Optional.empty()
                        : owners.taken(
                                id, typed.envelopeNo(), correction.command().receiptNo()))
                .save(correction -> {
                    receipts.change(
                            id,
                            typed.envelopeNo(),
                            typed.version(),
                            correction.command().receiptNo());
                    keep(
                            id,
                            correction.marks().get(0),
                            NumberCheckStore.CORRECTED,
                            typed.because(),
                            clerk.user().userName());
                    return correction;
                })
                .tell(correction -> new ReceiptCorrected(id, typed.envelopeNo()))
                .record(correction -> line(
                        id,
                        "receipt_corrected",
                        correction.marks().get(0),
                        salted(
                                id,
                                typed.envelopeNo(),
                                "receipt",
                                ReceiptNumber.text(correction.command().receiptNo()),
                                "because",
                                typed.because())))
                .map(correction -> typed.envelopeNo());
    }

    private Correction correction(CorrectReceipt typed) {
        ElectionId id = typed.electionId();
        Envelope before = intake.demandLocked(id, typed.envelopeNo());
        List<Marked> marks = marked.all(id).stream()
                .filter(now -> now.envelope().envelopeNo().equals(typed.envelopeNo())
                        && now.envelope().mark() != NumberMark.NUMBER_SHARED)
                .toList();
        return new Correction(typed.withReceipt(owners.written(id, typed.receiptNo())), before.receiptNo(), marks);
    }

    private static Optional<Refusal> nothingToCorrect(Correction correction) {
        if (correction.marks().isEmpty()) {
            return Optional.of(Refusal.of(
                    Why.NOT_IN_THIS_STATE,
                    "The receipt number of " + correction.command().envelopeNo() + " is settled already."));
        }
        return Objects.equals(
                        Key.text(correction.before()),
                        Key.text(correction.command().receiptNo()))
                ? Optional.of(Refusal.at(
                        "receiptNo",
                        Why.NOTHING_NEW,
                        "That is what the envelope has now. Confirm it as it is, or enter another number."))
                : Optional.empty();
    }

    private void keep(ElectionId electionId, Marked about, String settled, String because, UserName by) {
        EnvelopeNumber number = about.envelope().envelopeNo();
        checks.insert(
                electionId,
                new NumberCheckStore.Settled(
                        number,
                        checks.nextNumber(electionId, number),
                        about.envelope().mark(),
                        settled,
                        about.group(),
                        because,
                        by),
                clock.instant());
    }

    /** The ledger has which envelopes it is about; the receipt number and the reason as salted hashes only. */
    private static LedgerLine line(ElectionId electionId, String act, Marked about, Map<String, Object> salted) {
        Map<String, Object> payload = new LinkedHashMap<>();
        payload.put("mark", about.envelope().mark().code());
        payload.put("envelopes", about.group());
        payload.putAll(salted);
        return LedgerLine.of(
                LedgerChain.of(electionId), act, about.envelope().envelopeNo().value(), payload);
    }

    private Map<String, Object> salted(ElectionId electionId, EnvelopeNumber envelopeNo, String... namesAndTexts) {
        Map<String, Object> hashes = new LinkedHashMap<>();
        intake.salt(electionId, envelopeNo).ifPresent(salt -> {
            for (int i = 0; i < namesAndTexts.length; i += 2) {
                hashes.put(namesAndTexts[i], salt.hash(namesAndTexts[i + 1]));
            }
        });
        return hashes;
    }
}
