package org.proviso.intake.cure;

import jakarta.validation.Valid;
import java.time.Clock;
import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.proviso.access.ActDoor;
import org.proviso.access.Permission;
import org.proviso.core.Envelope;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.election.ElectionService;
import org.proviso.intake.CureStore;
import org.proviso.intake.IntakeService;
import org.proviso.intake.RecordCure;
import org.proviso.intake.StampWords;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerLine;
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
    private final ActDoor door;
    private final Clock clock;

    CureService(CureStore cures, IntakeService intake, ElectionService elections, ActDoor door, Clock clock) {
        this.cures = cures;
        this.intake = intake;
        this.elections = elections;
        this.door = door;
        this.clock = clock;
    }

    /**
     * Records what a voter brought; refused where the stamp is later than now or earlier than the ballot was cast.
     * Throws {@link IllegalArgumentException} where the office has no such envelope.
     */
    @Transactional
    public ActResult<RecordCure> record(@Valid RecordCure command) {
        ActDoor.Permitted keyer = door.demand(Permission.RECORD_CURE_EVIDENCE);
        return keyer.lock(() -> intake.demandLocked(command.electionId(), command.envelopeNo()))
                .refuse(envelope -> elections.closed(command.electionId()))
                .refuse(envelope -> stampRefusal(command, envelope))
                .save(envelope -> {
                    cures.insert(command, keyer.user().userName(), clock.instant());
                    return command;
                })
                .tell(recorded -> new CureRecorded(recorded.electionId(), recorded.envelopeNo()))
                .record(recorded -> LedgerLine.of(
                        LedgerChain.of(recorded.electionId()),
                        "cure_recorded",
                        recorded.envelopeNo().value(),
                        payload(recorded)));
    }

    /**
     * Takes back what was recorded by mistake, such as on the wrong envelope: it counts no more, and stays readable. Throws
     * {@link IllegalArgumentException} where there is no such envelope or evidence.
     */
    @Transactional
    public ActResult<TakeBackCure> takeBack(@Valid TakeBackCure command) {
        ActDoor.Permitted keyer = door.demand(Permission.RECORD_CURE_EVIDENCE);
        return keyer.lock(() -> recorded(command))
                .refuse(row -> elections.closed(command.electionId()))
                .refuse(row -> Refusal.when(
                        row.isTakenBack(), Refusal.Why.NOT_IN_THIS_STATE, "This evidence was taken back already."))
                .save(row -> {
                    cures.takeBack(
                            command.electionId(),
                            row,
                            keyer.user().userName(),
                            command.because().strip(),
                            clock.instant());
                    return row;
                })
                .tell(row -> new CureTakenBack(command.electionId(), command.envelopeNo()))
                .record(row -> LedgerLine.of(
                        LedgerChain.of(command.electionId()),
                        "cure_taken_back",
                        command.envelopeNo().value(),
                        payload(command, row)))
                .map(row -> command);
    }

    private CureStore.CureRow recorded(TakeBackCure command) {
        intake.demandLocked(command.electionId(), command.envelopeNo());
        return cures.rows(command.electionId(), command.envelopeNo()).stream()
                .filter(row -> row.number() == command.cureNo())
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(
                        "The envelope " + command.envelopeNo() + " has no evidence " + command.cureNo() + "."));
    }

    private Map<String, Object> payload(TakeBackCure command, CureStore.CureRow row) {
        Map<String, Object> payload = new LinkedHashMap<>();
        payload.put("ask", row.ask());
        payload.put("evidence", row.number());
        intake.salt(command.electionId(), command.envelopeNo())
                .ifPresent(salt ->
                        payload.put("because", salt.hash(command.because().strip())));
        return payload;
    }

    private Optional<Refusal> stampRefusal(RecordCure command, Envelope envelope) {
        LocalDateTime stamp = command.receivedAt();
        LocalDateTime now = LocalDateTime.ofInstant(clock.instant(), elections.zone(command.electionId()));
        if (stamp.isAfter(now)) {
            return notPossible(StampWords.laterThanNow(stamp, now));
        }
        LocalDateTime cast = envelope.cast().at();
        return cast != null && stamp.isBefore(cast)
                ? notPossible(StampWords.earlierThan("the ballot of " + envelope.envelopeNo(), stamp, cast))
                : Optional.empty();
    }

    private static Optional<Refusal> notPossible(String words) {
        return Optional.of(Refusal.at("receivedAt", Refusal.Why.MOMENT_NOT_POSSIBLE, words));
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
