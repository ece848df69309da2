package org.proviso.intake;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;
import java.time.LocalDateTime;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.proviso.core.ElectionId;
import org.proviso.core.Envelope;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.ReceiptNumber;
import org.proviso.core.YesNo;

/**
 * An envelope as it is taken out of its bag, before its affirmation is keyed: the numbers printed on it, where and how
 * the ballot was cast, and the stamp of its arrival. Moments are on the county's clock. An envelope on which no receipt
 * number is printed has none. Where another one has the receipt number, the person has seen that ({@code sharesReceipt}).
 * Where another one has the envelope number, this one comes in under a number made distinct, and {@code numberAlsoOn}
 * is the other.
 */
public record ReceiveEnvelope(
        @NotNull ElectionId electionId,

        @NotNull @Pattern(regexp = "[0-9A-Za-z][0-9A-Za-z-]{0,59}", message = "has letters, digits and - only")
        EnvelopeNumber envelopeNo,

        @Nullable @Pattern(regexp = "[0-9A-Z][0-9A-Z-]{0,59}", message = "has capital letters, digits and - only")
        ReceiptNumber receiptNo,

        Envelope.@NotNull Source source,
        @NotNull @Size(max = 200) String votingLocation,
        @NotNull @Size(max = 60) String precinct,
        @NotNull @Size(max = 60) String ballotStyle,
        @NotNull @Size(max = 40) String partyBallot,
        @Nullable LocalDateTime castAt,
        @NotNull YesNo extendedHours,
        @NotNull YesNo inLineAtClose,

        @NotNull @Size(max = 10) Set<@Pattern(regexp = "[a-z][a-z0-9_]{0,39}") String> issueReasons,

        @NotNull LocalDateTime receivedAt,
        @Nullable EnvelopeNumber numberAlsoOn,
        boolean sharesReceipt) {

    ReceiveEnvelope withReceipt(@Nullable ReceiptNumber number) {
        return new ReceiveEnvelope(
                electionId,
                envelopeNo,
                number,
                source,
                votingLocation,
                precinct,
                ballotStyle,
                partyBallot,
                castAt,
                extendedHours,
                inLineAtClose,
                issueReasons,
                receivedAt,
                numberAlsoOn,
                sharesReceipt);
    }

    public Envelope envelope() {
        return new Envelope(
                envelopeNo,
                receiptNo,
                source,
                new Envelope.Cast(
                        votingLocation,
                        precinct,
                        ballotStyle,
                        partyBallot,
                        castAt,
                        extendedHours,
                        inLineAtClose,
                        issueReasons),
                UnkeyedEnvelope.AFFIRMATION,
                UnkeyedEnvelope.HANDLING);
    }
}
