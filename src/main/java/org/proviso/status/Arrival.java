package org.proviso.status;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.proviso.core.Envelope;
import org.proviso.core.Envelope.Condition;
import org.proviso.core.Envelope.Source;

/**
 * How an envelope came: from where, cast on which day, and whether it is sealed. The source is null where nobody noted
 * it; a location that is not known is empty.
 */
public record Arrival(
        @Nullable Source source,
        String votingLocation,
        @Nullable LocalDate castOn,
        boolean sealed) {

    static Arrival of(Envelope envelope) {
        return new Arrival(
                envelope.source(),
                envelope.cast().votingLocation(),
                Optional.ofNullable(envelope.cast().at())
                        .map(LocalDateTime::toLocalDate)
                        .orElse(null),
                envelope.handling().condition() == Condition.SEALED);
    }
}
