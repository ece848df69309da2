package org.proviso.intake.desk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.proviso.access.AccessService;
import org.proviso.access.Permission;
import org.proviso.core.ElectionId;
import org.proviso.election.ElectionService;
import org.proviso.intake.IntakeService;
import org.proviso.intake.RecordedTransmittal;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Returns from voting locations compared with the envelopes received. */
@Service
public class LocationReturnService {

    private final IntakeService intake;
    private final EnvelopeListStore envelopes;
    private final ElectionService elections;
    private final AccessService access;

    LocationReturnService(
            IntakeService intake, EnvelopeListStore envelopes, ElectionService elections, AccessService access) {
        this.intake = intake;
        this.envelopes = envelopes;
        this.elections = elections;
        this.access = access;
    }

    /**
     * Every voting location that the precincts name or something came from, those out of balance first. Envelopes
     * received by mail have none.
     */
    @Transactional(readOnly = true)
    public List<LocationReturn> all(ElectionId electionId) {
        access.demand(Permission.RECEIVE_BAGS);
        Map<String, List<RecordedTransmittal>> byLocation = new LinkedHashMap<>();
        intake.recordedTransmittals(electionId)
                .forEach(recorded -> byLocation
                        .computeIfAbsent(recorded.transmittal().votingLocation(), any -> new ArrayList<>())
                        .add(recorded));
        elections
                .ballots(electionId)
                .votingLocations()
                .forEach(place -> byLocation.computeIfAbsent(place, any -> List.of()));
        Map<String, Integer> here = envelopes.hereByLocation(electionId);
        here.keySet().stream()
                .filter(place -> !place.isEmpty())
                .forEach(place -> byLocation.computeIfAbsent(place, any -> List.of()));
        return byLocation.entrySet().stream()
                .map(entry -> new LocationReturn(
                        entry.getKey(), List.copyOf(entry.getValue()), here.getOrDefault(entry.getKey(), 0)))
                .sorted(Comparator.comparing(LocationReturn::addsUp))
                .toList();
    }
}
