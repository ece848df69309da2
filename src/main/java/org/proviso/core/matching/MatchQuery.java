package org.proviso.core.matching;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.proviso.core.Address;
import org.proviso.core.Envelope;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.PersonName;
import org.proviso.core.matching.spelling.WrittenBirthDate;

/**
 * What an envelope says about who voted it. Text not given is empty, an unknown date null; then the written one has what can
 * be read of it.
 */
public record MatchQuery(
        EnvelopeNumber envelopeNo,
        PersonName name,
        String formerName,
        @Nullable LocalDate birthDate,
        WrittenBirthDate writtenBirthDate,
        Address residence,
        Address former,
        String idLast4,
        String driversLicense) {

    /** With a whole date of birth, or none. */
    public MatchQuery(
            EnvelopeNumber envelopeNo,
            PersonName name,
            String formerName,
            @Nullable LocalDate birthDate,
            Address residence,
            Address former,
            String idLast4,
            String driversLicense) {
        this(
                envelopeNo,
                name,
                formerName,
                birthDate,
                WrittenBirthDate.NOTHING,
                residence,
                former,
                idLast4,
                driversLicense);
    }

    public static MatchQuery of(Envelope envelope) {
        Envelope.Affirmation said = envelope.affirmation();
        return new MatchQuery(
                envelope.envelopeNo(),
                said.name(),
                said.formerName(),
                said.birthDate(),
                WrittenBirthDate.read(said.birthDateAsWritten()),
                said.residence(),
                said.former(),
                said.idLast4(),
                said.driversLicense());
    }
}
