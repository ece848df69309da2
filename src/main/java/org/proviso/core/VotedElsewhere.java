package org.proviso.core;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** A line of the list the state sends of people who voted in another county; a resemblance is not yet a person. */
public record VotedElsewhere(
        PersonName name,
        @Nullable LocalDate birthDate,
        String idLast4,
        String driversLicense,
        String county,
        String how,
        @Nullable LocalDate on) {}
