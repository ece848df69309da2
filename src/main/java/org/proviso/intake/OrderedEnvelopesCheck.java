package org.proviso.intake;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.Key;
import org.proviso.core.act.Refusal;
import org.proviso.election.orders.CourtOrderCheck;
import org.springframework.stereotype.Component;

/** A new order of a court cannot name an envelope that never came. */
@Component
class OrderedEnvelopesCheck implements CourtOrderCheck {

    private final EnvelopeStore envelopes;

    OrderedEnvelopesCheck(EnvelopeStore envelopes) {
        this.envelopes = envelopes;
    }

    @Override
    public Optional<Refusal> refusal(ElectionId electionId, Set<EnvelopeNumber> envelopeNos) {
        Set<EnvelopeNumber> known = envelopes.known(electionId, envelopeNos);
        List<EnvelopeNumber> unknown = envelopeNos.stream()
                .filter(number -> !known.contains(number))
                .sorted()
                .toList();
        return unknown.isEmpty()
                ? Optional.empty()
                : Optional.of(Refusal.at(
                        "envelopeNos",
                        Refusal.Why.NO_SUCH_ENVELOPE,
                        "The office has no envelope " + Key.join(", ", unknown) + " in this election."));
    }
}
