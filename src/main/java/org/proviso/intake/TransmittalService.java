package org.proviso.intake;

import jakarta.validation.Valid;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.proviso.access.AccessService;
import org.proviso.access.OfficeUser;
import org.proviso.access.Permission;
import org.proviso.core.ElectionId;
import org.proviso.core.Transmittal;
import org.proviso.election.ElectionService;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.validation.annotation.Validated;

/** The bags that voting locations send back, with their seals and counts. */
@Service
@Validated
public class TransmittalService {

    private final TransmittalStore transmittals;
    private final ElectionService elections;
    private final AccessService access;
    private final LedgerService ledger;

    TransmittalService(
            TransmittalStore transmittals, ElectionService elections, AccessService access, LedgerService ledger) {
        this.transmittals = transmittals;
        this.elections = elections;
        this.access = access;
        this.ledger = ledger;
    }

    /** The transmittals of an election in the order they came in. */
    @Transactional(readOnly = true)
    public List<RecordedTransmittal> all(ElectionId electionId) {
        access.demand(Permission.RECEIVE_BAGS);
        return transmittals.recorded(electionId);
    }

    /** Records a return and gives its line. Throws {@link IllegalArgumentException} where there is no such election. */
    @Transactional
    public int record(@Valid RecordTransmittal command) {
        OfficeUser receiver = access.demand(Permission.RECEIVE_BAGS);
        elections.zone(command.electionId());
        int line = transmittals.add(command.electionId(), command.transmittal());
        enter(command, line, receiver, "transmittal_recorded");
        return line;
    }

    /**
     * Writes a return as it should have been recorded. A correction that comes with an old version is refused with
     * {@link org.springframework.dao.OptimisticLockingFailureException}.
     */
    @Transactional
    public void correct(int lineNo, int version, @Valid RecordTransmittal command) {
        OfficeUser receiver = access.demand(Permission.RECEIVE_BAGS);
        transmittals.change(command.electionId(), lineNo, version, command.transmittal());
        enter(command, lineNo, receiver, "transmittal_corrected");
    }

    private void enter(RecordTransmittal command, int line, OfficeUser receiver, String act) {
        ledger.record(
                LedgerChain.of(command.electionId()),
                receiver.actor(),
                act,
                "transmittal-" + line,
                payload(command.transmittal()));
    }

    /** Seals and counts are nobody's secret; what the return does not give is left out. */
    private static Map<String, Object> payload(Transmittal one) {
        Map<String, Object> payload = new LinkedHashMap<>();
        payload.put("voting_location", one.votingLocation());
        put(payload, "day", one.day() == null ? null : one.day().toString());
        payload.put("bag", one.bag());
        payload.put("seal_out", one.sealOut());
        payload.put("seal_in", one.sealIn());
        put(payload, "supplied", one.supplied());
        payload.put("issued", one.issued());
        payload.put("spoiled", one.spoiled());
        put(payload, "unused", one.unused());
        payload.put("returned", one.returned());
        put(payload, "scanned_in_error", one.scannedInError());
        put(payload, "loose_ballots", one.looseBallots());
        return payload;
    }

    private static void put(Map<String, Object> payload, String name, @Nullable Object value) {
        if (value != null) {
            payload.put(name, value);
        }
    }
}
