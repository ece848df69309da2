package org.proviso.intake.cure;

import jakarta.validation.Valid;
import java.time.Clock;
import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.Map;
import org.proviso.access.AccessService;
import org.proviso.access.OfficeUser;
import org.proviso.access.Permission;
import org.proviso.core.Envelope;
import org.proviso.core.adjudication.finding.DateWords;
import org.proviso.election.ElectionService;
import org.proviso.intake.CureStore;
import org.proviso.intake.IntakeRefusedException;
import org.proviso.intake.IntakeService;
import org.proviso.intake.RecordCure;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.validation.annotation.Validated;

/** What voters bring after casting a ballot: its stamp decides whether it is in time, never the day it was keyed. */
@Service
@Validated
public class CureService {

    private final CureStore cures;
    private final IntakeService intake;
    private final ElectionService elections;
    private final AccessService access;
    private final LedgerService ledger;
    private final ApplicationEventPublisher rooms;
    private final Clock clock;

    CureService(
            CureStore cures,
            IntakeService intake,
            ElectionService elections,
            AccessService access,
            LedgerService ledger,
            ApplicationEventPublisher rooms,
            Clock clock) {
        this.cures = cures;
        this.intake = intake;
        this.elections = elections;
        this.access = access;
        this.ledger = ledger;
        this.rooms = rooms;
        this.clock = clock;
    }

    /**
     * Records what a voter brought. Refused with {@link IntakeRefusedException} where the office has no such envelope,
     * or the stamp is later than now or earlier than the ballot was cast.
     */
    @Transactional
    public void record(@Valid RecordCure command) {
        OfficeUser keyer = access.demand(Permission.RECORD_CURE_EVIDENCE);
        Envelope envelope = intake.demandLocked(command.electionId(), command.envelopeNo());
        check(command, envelope);
        cures.insert(command, keyer.userName(), clock.instant());
        rooms.publishEvent(new CureRecorded(command.electionId(), command.envelopeNo()));
        ledger.record(
                LedgerChain.of(command.electionId()),
                keyer.actor(),
                "cure_recorded",
                command.envelopeNo().value(),
                payload(command));
    }

    private void check(RecordCure command, Envelope envelope) {
        LocalDateTime stamp = command.receivedAt();
        LocalDateTime now = LocalDateTime.ofInstant(clock.instant(), elections.zone(command.electionId()));
        if (stamp.isAfter(now)) {
            throw new IntakeRefusedException("The stamp, " + DateWords.moment(stamp) + ", is later than now, "
                    + DateWords.moment(now) + ": look at its date again.");
        }
        LocalDateTime cast = envelope.cast().at();
        if (cast != null && stamp.isBefore(cast)) {
            throw new IntakeRefusedException(
                    "The stamp, " + DateWords.moment(stamp) + ", is earlier than the ballot of " + envelope.envelopeNo()
                            + ", cast at " + DateWords.moment(cast) + ": look at its date again.");
        }
    }

    private Map<String, Object> payload(RecordCure command) {
        Map<String, Object> payload = new LinkedHashMap<>();
        payload.put("ask", command.ask().code());
        payload.put("received_at", command.receivedAt().toString());
        intake.salt(command.electionId(), command.envelopeNo())
                .ifPresent(salt -> payload.put("words", salt.hash(command.words())));
        return payload;
    }
}
