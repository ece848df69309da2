package org.proviso.intake;

import jakarta.validation.Valid;
import java.time.Clock;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.proviso.access.AccessService;
import org.proviso.access.OfficeUser;
import org.proviso.access.Permission;
import org.proviso.core.Election;
import org.proviso.core.Election.Receipts;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.ReceiptNumber;
import org.proviso.core.adjudication.finding.DateWords;
import org.proviso.election.ElectionService;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.validation.annotation.Validated;

/** Takes envelopes in by hand, each once; from then on each is accounted for, whether it is keyed or not. */
@Service
@Validated
public class ReceivingService {

    private final EnvelopeStore envelopes;
    private final AffirmationStore affirmations;
    private final ElectionService elections;
    private final AccessService access;
    private final LedgerService ledger;
    private final ApplicationEventPublisher rooms;
    private final Clock clock;

    ReceivingService(
            EnvelopeStore envelopes,
            AffirmationStore affirmations,
            ElectionService elections,
            AccessService access,
            LedgerService ledger,
            ApplicationEventPublisher rooms,
            Clock clock) {
        this.envelopes = envelopes;
        this.affirmations = affirmations;
        this.elections = elections;
        this.access = access;
        this.ledger = ledger;
        this.rooms = rooms;
        this.clock = clock;
    }

    /**
     * Takes an envelope in; every box of its affirmation is not yet keyed. Refused with {@link IntakeRefusedException}
     * where its number or receipt number is taken, its receipt number has a slip, the election has no such ballot style,
     * or the stamp cannot be right.
     */
    @Transactional
    public void receive(@Valid ReceiveEnvelope typed) {
        OfficeUser keyer = access.demand(Permission.KEY_ENVELOPES);
        ReceiveEnvelope command = typed.withReceipt(writtenReceipt(typed));
        ElectionId id = command.electionId();
        checkStamp(command);
        checkNumbers(command);
        envelopes.add(id, command.envelope(), command.receivedAt());
        affirmations.insert(id, List.of(command.envelope()));
        rooms.publishEvent(new EnvelopeReceived(id, new EnvelopeNumber(command.envelopeNo())));
        ledger.record(LedgerChain.of(id), keyer.actor(), "envelope_received", command.envelopeNo(), payload(command));
    }

    /** With a check digit a number has one spelling, however it was typed. */
    private String writtenReceipt(ReceiveEnvelope command) {
        String number = command.receiptNo();
        if (receipts(command.electionId()) == Receipts.OWN) {
            return number;
        }
        ReceiptNumber.slip(number).ifPresent(slip -> {
            throw new IntakeRefusedException("The receipt number " + number + " " + slip.words() + ".");
        });
        return ReceiptNumber.find(number).orElseThrow().written();
    }

    private Receipts receipts(ElectionId electionId) {
        return elections.find(electionId).map(Election::receipts).orElse(Receipts.OWN);
    }

    private void checkStamp(ReceiveEnvelope command) {
        LocalDateTime stamp = command.receivedAt();
        LocalDateTime now = LocalDateTime.ofInstant(clock.instant(), elections.zone(command.electionId()));
        if (stamp.isAfter(now)) {
            throw new IntakeRefusedException("The stamp, " + DateWords.moment(stamp) + ", is later than now, "
                    + DateWords.moment(now) + ": look at its date again.");
        }
        if (command.castAt() != null && stamp.isBefore(command.castAt())) {
            throw new IntakeRefusedException("The stamp, " + DateWords.moment(stamp)
                    + ", is earlier than the ballot was cast, " + DateWords.moment(command.castAt()) + ".");
        }
    }

    private void checkNumbers(ReceiveEnvelope command) {
        ElectionId id = command.electionId();
        if (!envelopes
                .known(id, Set.of(new EnvelopeNumber(command.envelopeNo())))
                .isEmpty()) {
            throw new IntakeRefusedException("The office has an envelope " + command.envelopeNo() + " already.");
        }
        if (envelopes.hasReceipt(command.receiptNo())) {
            throw new IntakeRefusedException(
                    "The receipt number " + command.receiptNo() + " belongs to another envelope.");
        }
        String style = command.ballotStyle();
        if (!style.isEmpty() && elections.ballots(id).style(style).isEmpty()) {
            throw new IntakeRefusedException("This election has no ballot style " + style + ".");
        }
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
