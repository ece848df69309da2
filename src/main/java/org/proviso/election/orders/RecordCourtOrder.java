package org.proviso.election.orders;

import jakarta.validation.constraints.AssertTrue;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.proviso.core.CourtOrder;
import org.proviso.core.CourtOrder.Kind;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;

/**
 * A court's order as the office received it. {@code until}, on the county's clock, belongs to an order that extends
 * the hours. An order to open, count or reject names its envelopes; one that names none is about every envelope. The number of
 * the court's case and the judge may be empty.
 */
public record RecordCourtOrder(
        @NotNull ElectionId electionId,
        @NotNull Kind kind,
        @NotBlank @Size(max = 200) String court,
        @Nullable LocalDate date,
        @NotBlank @Size(max = 2000) String scope,
        CourtOrder.@NotNull Status standing,
        @Nullable LocalDateTime until,
        @NotNull Set<@NotNull EnvelopeNumber> envelopeNos,
        @NotNull @Size(max = 100) String caseNo,
        @NotNull @Size(max = 200) String judge) {

    /** An order of which neither the case number nor the judge is known. */
    public RecordCourtOrder(
            ElectionId electionId,
            Kind kind,
            String court,
            @Nullable LocalDate date,
            String scope,
            CourtOrder.Status standing,
            @Nullable LocalDateTime until,
            Set<EnvelopeNumber> envelopeNos) {
        this(electionId, kind, court, date, scope, standing, until, envelopeNos, "", "");
    }

    @AssertTrue(message = "only an order that extends the hours says until when")
    public boolean isUntilOfAnExtension() {
        return until == null || kind == Kind.EXTEND;
    }

    @AssertTrue(message = "an order that extends the hours says until when")
    public boolean isExtensionWithUntil() {
        return kind != Kind.EXTEND || until != null;
    }

    @AssertTrue(message = "an order to open, count or reject names its envelopes")
    public boolean isAboutNamedEnvelopes() {
        boolean namesThem = kind == Kind.OPEN || kind == Kind.COUNT || kind == Kind.REJECT;
        return !namesThem || envelopeNos == null || !envelopeNos.isEmpty();
    }

    CourtOrder order() {
        return new CourtOrder(kind, court, date, scope, standing, until, envelopeNos);
    }
}
