package org.proviso.intake;

import jakarta.validation.Valid;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.proviso.access.ActDoor;
import org.proviso.access.Permission;
import org.proviso.core.ElectionId;
import org.proviso.core.Transmittal;
import org.proviso.core.act.ActResult;
import org.proviso.election.ElectionService;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerLine;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.validation.annotation.Validated;

/** The bags that voting locations send back, with their seals and counts. */
@Service
@Validated
public class TransmittalService {

    private final TransmittalStore transmittals;
    private final ElectionService elections;
    private final ActDoor door;

    TransmittalService(TransmittalStore transmittals, ElectionService elections, ActDoor door) {
        this.transmittals = transmittals;
        this.elections = elections;
        this.door = door;
    }

    /** Records a return. Throws {@link IllegalArgumentException} where there is no such election. */
    @Transactional
    public ActResult<RecordedTransmittal> record(@Valid RecordTransmittal command) {
        Transmittal transmittal = command.transmittal();
        return door.demand(Permission.RECEIVE_BAGS)
                .lock(() -> elections.zone(command.electionId()))
                .refuse(any -> elections.closed(command.electionId()))
                .save(any ->
                        new RecordedTransmittal(transmittals.add(command.electionId(), transmittal), 0, transmittal))
                .record(recorded -> line(command.electionId(), "transmittal_recorded", recorded));
    }

    /**
     * Writes a return as it should have been recorded. A correction that comes with an old version is an
     * {@link org.springframework.dao.OptimisticLockingFailureException}.
     */
    @Transactional
    public ActResult<RecordedTransmittal> correct(int lineNo, int version, @Valid RecordTransmittal command) {
        Transmittal transmittal = command.transmittal();
        return door.demand(Permission.RECEIVE_BAGS)
                .lockNothing()
                .refuse(any -> elections.closed(command.electionId()))
                .save(any -> {
                    transmittals.change(command.electionId(), lineNo, version, transmittal);
                    return new RecordedTransmittal(lineNo, version + 1, transmittal);
                })
                .record(corrected -> line(command.electionId(), "transmittal_corrected", corrected));
    }

    private static LedgerLine line(ElectionId electionId, String act, RecordedTransmittal recorded) {
        return LedgerLine.of(
                LedgerChain.of(electionId), act, "transmittal-" + recorded.lineNo(), payload(recorded.transmittal()));
    }

    /** Seals and counts are nobody's secret; what the return does not give is left out. */
    private static Map<String, Object> payload(Transmittal transmittal) {
        Map<String, Object> payload = new LinkedHashMap<>();
        payload.put("voting_location", transmittal.votingLocation());
        put(payload, "day", transmittal.day() == null ? null : transmittal.day().toString());
        payload.put("bag", transmittal.bag());
        payload.put("seal_out", transmittal.sealOut());
        payload.put("seal_in", transmittal.sealIn());
        put(payload, "supplied", transmittal.supplied());
        payload.put("issued", transmittal.issued());
        payload.put("spoiled", transmittal.spoiled());
        put(payload, "unused", transmittal.unused());
        payload.put("returned", transmittal.returned());
        put(payload, "scanned_in_error", transmittal.scannedInError());
        put(payload, "loose_ballots", transmittal.looseBallots());
        return payload;
    }

    private static void put(Map<String, Object> payload, String name, @Nullable Object value) {
        if (value != null) {
            payload.put(name, value);
        }
    }
}
