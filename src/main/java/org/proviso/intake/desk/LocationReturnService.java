package org.proviso.intake.desk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.proviso.core.ElectionId;
import org.proviso.intake.RecordedTransmittal;
import org.proviso.intake.TransmittalService;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Returns from voting locations compared with the envelopes received. */
@Service
public class LocationReturnService {

    private final TransmittalService transmittals;
    private final EnvelopeListStore envelopes;

    LocationReturnService(TransmittalService transmittals, EnvelopeListStore envelopes) {
        this.transmittals = transmittals;
        this.envelopes = envelopes;
    }

    /** Every voting location, those out of balance first. Envelopes received by mail have none. */
    @Transactional(readOnly = true)
    public List<LocationReturn> all(ElectionId electionId) {
        Map<String, List<RecordedTransmittal>> byLocation = new LinkedHashMap<>();
        transmittals
                .all(electionId)
                .forEach(one -> byLocation
                        .computeIfAbsent(one.transmittal().votingLocation(), any -> new ArrayList<>())
                        .add(one));
        Map<String, Integer> here = envelopes.hereByLocation(electionId);
        here.keySet().stream()
                .filter(place -> !place.isEmpty())
                .forEach(place -> byLocation.computeIfAbsent(place, any -> List.of()));
        return byLocation.entrySet().stream()
                .map(one -> new LocationReturn(
                        one.getKey(), List.copyOf(one.getValue()), here.getOrDefault(one.getKey(), 0)))
                .sorted(Comparator.comparing(LocationReturn::addsUp))
                .toList();
    }
}
