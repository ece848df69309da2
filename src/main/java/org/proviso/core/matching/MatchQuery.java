package org.proviso.core.matching;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.proviso.core.Address;
import org.proviso.core.Envelope;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.PersonName;

/** What an envelope says about who voted it. Text not given is empty, an unknown date null. */
public record MatchQuery(
        EnvelopeNumber envelopeNo,
        PersonName name,
        String formerName,
        @Nullable LocalDate birthDate,
        Address residence,
        Address former,
        String idLast4,
        String driversLicense) {

    public static MatchQuery of(Envelope envelope) {
        Envelope.Affirmation said = envelope.affirmation();
        return new MatchQuery(
                envelope.envelopeNo(),
                said.name(),
                said.formerName(),
                said.birthDate(),
                said.residence(),
                said.former(),
                said.idLast4(),
                said.driversLicense());
    }
}
