package org.proviso.intake.numbers;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.PositiveOrZero;
import jakarta.validation.constraints.Size;
import org.jspecify.annotations.Nullable;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.ReceiptNumber;

/**
 * The receipt number of an envelope as it should have been entered, null where the envelope has none; the version is that
 * of the envelope as it was seen. Where another envelope has the number, the person has seen that ({@code sharesReceipt}).
 */
public record CorrectReceipt(
        @NotNull ElectionId electionId,
        @NotNull EnvelopeNumber envelopeNo,
        @PositiveOrZero int version,

        @Nullable @Pattern(regexp = "[0-9A-Z][0-9A-Z-]{0,59}", message = "has capital letters, digits and - only")
        ReceiptNumber receiptNo,

        boolean sharesReceipt,
        @NotBlank @Size(max = 1000) String because) {

    CorrectReceipt withReceipt(@Nullable ReceiptNumber number) {
        return new CorrectReceipt(electionId, envelopeNo, version, number, sharesReceipt, because);
    }
}
