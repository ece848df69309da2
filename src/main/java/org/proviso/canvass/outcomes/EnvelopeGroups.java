package org.proviso.canvass.outcomes;

import java.util.List;
import org.proviso.core.BetweenRooms;
import org.proviso.core.CourtOrder;
import org.proviso.core.Election;
import org.proviso.core.EnvelopeNumber;
import org.springframework.stereotype.Component;

/** The envelopes of an election as the figures count them, never one by one. */
@Component
@BetweenRooms
public class EnvelopeGroups {

    private final EnvelopeGroupStore groups;

    EnvelopeGroups(EnvelopeGroupStore groups) {
        this.groups = groups;
    }

    /** Every envelope of the election once. */
    public List<EnvelopeGroup> of(Election election) {
        List<CourtOrder> holds = election.orders().stream()
                .filter(order -> order.kind() == CourtOrder.Kind.HOLD && order.binds())
                .toList();
        return groups.groups(
                election.id(),
                holds.stream().anyMatch(order -> order.envelopeNos().isEmpty()),
                holds.stream().flatMap(order -> order.envelopeNos().stream()).toList());
    }

    /** The numbers of those that are kept apart as cast in extended hours; hardly ever there are any. */
    public List<EnvelopeNumber> extended(Election election) {
        return groups.extended(election.id());
    }
}
