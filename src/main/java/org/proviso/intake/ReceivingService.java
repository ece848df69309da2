package org.proviso.intake;

import jakarta.validation.Valid;
import java.time.Clock;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.proviso.access.AccessService;
import org.proviso.access.ActDoor;
import org.proviso.access.Permission;
import org.proviso.core.CheckedReceipt;
import org.proviso.core.Election;
import org.proviso.core.Election.Receipts;
import org.proviso.core.ElectionId;
import org.proviso.core.Envelope;
import org.proviso.core.ReceiptNumber;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.election.ElectionService;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerLine;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.validation.annotation.Validated;

/** Receives envelopes by hand, each once; from then on each is accounted for, whether it is keyed or not. */
@Service
@Validated
public class ReceivingService {

    private final EnvelopeStore envelopes;
    private final AffirmationStore affirmations;
    private final ElectionService elections;
    private final AccessService access;
    private final ActDoor door;
    private final Clock clock;

    ReceivingService(
            EnvelopeStore envelopes,
            AffirmationStore affirmations,
            ElectionService elections,
            AccessService access,
            ActDoor door,
            Clock clock) {
        this.envelopes = envelopes;
        this.affirmations = affirmations;
        this.elections = elections;
        this.access = access;
        this.door = door;
        this.clock = clock;
    }

    /** The election whose envelopes are received: its day, and whether its receipts have a check digit. */
    @Transactional(readOnly = true)
    public Election election(ElectionId electionId) {
        access.demand(Permission.KEY_ENVELOPES);
        return elections
                .find(electionId)
                .orElseThrow(() -> new IllegalArgumentException("The office has no election " + electionId + "."));
    }

    /**
     * Receives an envelope; every box of its affirmation is not yet keyed. Refused at the box where its number or
     * receipt number is taken, its receipt number has a slip, the election has no such ballot style, or the stamp cannot
     * be right.
     */
    @Transactional
    public ActResult<Envelope> receive(@Valid ReceiveEnvelope typed) {
        return door.demand(Permission.KEY_ENVELOPES)
                .lock(() -> typed.withReceipt(writtenReceipt(typed)))
                .refuse(command -> elections.closed(command.electionId()))
                .refuse(this::receiptSlip)
                .refuse(this::stampRefusal)
                .refuse(this::numberRefusal)
                .save(command -> {
                    envelopes.add(command.electionId(), command.envelope(), command.receivedAt());
                    affirmations.insert(command.electionId(), List.of(command.envelope()));
                    return command;
                })
                .tell(command -> new EnvelopeReceived(command.electionId(), command.envelopeNo()))
                .record(command -> LedgerLine.of(
                        LedgerChain.of(command.electionId()),
                        "envelope_received",
                        command.envelopeNo().value(),
                        payload(command)))
                .map(ReceiveEnvelope::envelope);
    }

    /** With a check digit a number has one spelling, however it was typed; one with a slip stays as typed. */
    private ReceiptNumber writtenReceipt(ReceiveEnvelope command) {
        return hasOwnReceipts(command)
                ? command.receiptNo()
                : CheckedReceipt.find(command.receiptNo().value()).orElse(command.receiptNo());
    }

    private Optional<Refusal> receiptSlip(ReceiveEnvelope command) {
        return hasOwnReceipts(command)
                ? Optional.empty()
                : CheckedReceipt.slip(command.receiptNo().value())
                        .map(slip -> Refusal.at(
                                "receiptNo",
                                Why.MISTYPED,
                                "The receipt number " + command.receiptNo() + " " + slip.words() + "."));
    }

    private boolean hasOwnReceipts(ReceiveEnvelope command) {
        return elections.find(command.electionId()).map(Election::receipts).orElse(Receipts.OWN) == Receipts.OWN;
    }

    private Optional<Refusal> stampRefusal(ReceiveEnvelope command) {
        LocalDateTime stamp = command.receivedAt();
        LocalDateTime now = LocalDateTime.ofInstant(clock.instant(), elections.zone(command.electionId()));
        if (stamp.isAfter(now)) {
            return at("receivedAt", Why.MOMENT_NOT_POSSIBLE, StampWords.laterThanNow(stamp, now));
        }
        LocalDateTime cast = command.castAt();
        return cast != null && stamp.isBefore(cast)
                ? at("receivedAt", Why.MOMENT_NOT_POSSIBLE, StampWords.earlierThan("the ballot", stamp, cast))
                : Optional.empty();
    }

    private Optional<Refusal> numberRefusal(ReceiveEnvelope command) {
        ElectionId id = command.electionId();
        if (!envelopes.known(id, Set.of(command.envelopeNo())).isEmpty()) {
            return at(
                    "envelopeNo", Why.NUMBER_TAKEN, "The office has an envelope " + command.envelopeNo() + " already.");
        }
        if (envelopes.hasReceipt(command.receiptNo())) {
            return at(
                    "receiptNo",
                    Why.NUMBER_TAKEN,
                    "The receipt number " + command.receiptNo() + " belongs to another envelope.");
        }
        String style = command.ballotStyle();
        return !style.isEmpty() && elections.ballots(id).style(style).isEmpty()
                ? at("ballotStyle", Why.NO_SUCH_STYLE, "This election has no ballot style " + style + ".")
                : Optional.empty();
    }

    private static Optional<Refusal> at(String field, Why why, String words) {
        return Optional.of(Refusal.at(field, why, words));
    }

    /** The receipt number stays out: with it a voter looks up the own envelope. */
    private static Map<String, Object> payload(ReceiveEnvelope command) {
        return Map.of(
                "source", command.source().code(),
                "voting_location", command.votingLocation(),
                "style", command.ballotStyle(),
                "received_at", command.receivedAt().toString());
    }
}
