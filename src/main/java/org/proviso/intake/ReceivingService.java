package org.proviso.intake;

import jakarta.validation.Valid;
import java.time.Clock;
import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.proviso.access.AccessService;
import org.proviso.access.ActDoor;
import org.proviso.access.Permission;
import org.proviso.core.Election;
import org.proviso.core.ElectionId;
import org.proviso.core.Envelope;
import org.proviso.core.EnvelopeNumber;
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
    private final ReceiptOwners receipts;
    private final ElectionService elections;
    private final AccessService access;
    private final ActDoor door;
    private final Clock clock;

    ReceivingService(
            EnvelopeStore envelopes,
            AffirmationStore affirmations,
            ReceiptOwners receipts,
            ElectionService elections,
            AccessService access,
            ActDoor door,
            Clock clock) {
        this.envelopes = envelopes;
        this.affirmations = affirmations;
        this.receipts = receipts;
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

    /** The envelopes that have this receipt number already, as a person reads them. */
    @Transactional(readOnly = true)
    public List<String> withReceipt(ElectionId electionId, ReceiptNumber receiptNo) {
        access.demand(Permission.KEY_ENVELOPES);
        return receipts.others(electionId, null, receiptNo);
    }

    /** What the boxes of the form are chosen from. */
    @Transactional(readOnly = true)
    public ReceivingChoices choices(ElectionId electionId) {
        access.demand(Permission.KEY_ENVELOPES);
        return ReceivingChoices.of(elections.ballots(electionId), envelopes.votingLocations(electionId));
    }

    /**
     * Receives an envelope; every box of its affirmation is not yet keyed. Refused at the box where its number is taken,
     * its receipt number has a slip or is on another envelope and nobody has seen that, the election has no such ballot
     * style, or the stamp cannot be right.
     */
    @Transactional
    public ActResult<Envelope> receive(@Valid ReceiveEnvelope typed) {
        return door.demand(Permission.KEY_ENVELOPES)
                .lock(() -> typed.withReceipt(writtenReceipt(typed)))
                .refuse(command -> elections.closed(command.electionId()))
                .refuse(command -> receipts.slip(command.electionId(), command.receiptNo()))
                .refuse(this::stampRefusal)
                .refuse(this::numberRefusal)
                .save(command -> {
                    envelopes.add(
                            command.electionId(), command.envelope(), command.receivedAt(), command.numberAlsoOn());
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

    private @Nullable ReceiptNumber writtenReceipt(ReceiveEnvelope command) {
        return receipts.written(command.electionId(), command.receiptNo());
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
        EnvelopeNumber other = command.numberAlsoOn();
        if (other != null && envelopes.known(id, Set.of(other)).isEmpty()) {
            return at("envelopeNo", Why.NO_SUCH_ENVELOPE, "The office has no envelope " + other + ".");
        }
        if (!envelopes.known(id, Set.of(command.envelopeNo())).isEmpty()) {
            return at(
                    "envelopeNo", Why.NUMBER_TAKEN, "The office has an envelope " + command.envelopeNo() + " already.");
        }
        Optional<Refusal> shared =
                command.sharesReceipt() ? Optional.empty() : receipts.taken(id, null, command.receiptNo());
        if (shared.isPresent()) {
            return shared;
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
    private Map<String, Object> payload(ReceiveEnvelope command) {
        Map<String, Object> payload = new LinkedHashMap<>();
        payload.put("source", command.source().code());
        payload.put("voting_location", command.votingLocation());
        payload.put("style", command.ballotStyle());
        payload.put("received_at", command.receivedAt().toString());
        if (command.receiptNo() == null) {
            payload.put("receipt", "none");
        }
        List<String> shared = receipts.others(command.electionId(), command.envelopeNo(), command.receiptNo());
        if (!shared.isEmpty()) {
            payload.put("receipt_also_on", shared);
        }
        if (command.numberAlsoOn() != null) {
            payload.put("number_also_on", command.numberAlsoOn().value());
        }
        return payload;
    }
}
