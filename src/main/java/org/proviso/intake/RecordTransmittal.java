package org.proviso.intake;

import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.PositiveOrZero;
import jakarta.validation.constraints.Size;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.proviso.core.ElectionId;
import org.proviso.core.Transmittal;

/** A voting location's return as it was counted in: seals, and how many envelopes. What it does not give is null. */
public record RecordTransmittal(
        @NotNull ElectionId electionId,
        @NotBlank @Size(max = 200) String votingLocation,
        @Nullable LocalDate day,
        @NotNull @Size(max = 60) String bag,
        @NotNull @Size(max = 60) String sealOut,
        @NotNull @Size(max = 60) String sealIn,
        @Nullable @PositiveOrZero @Max(MOST) Integer supplied,
        @NotNull @PositiveOrZero @Max(MOST) Integer issued,
        @NotNull @PositiveOrZero @Max(MOST) Integer spoiled,
        @Nullable @PositiveOrZero @Max(MOST) Integer unused,
        @NotNull @PositiveOrZero @Max(MOST) Integer returned,
        @Nullable @PositiveOrZero @Max(MOST) Integer scannedInError,
        @Nullable @PositiveOrZero @Max(MOST) Integer looseBallots) {

    /** In the address of the page of transmittals: the location whose return is to be recorded. */
    public static final String PLACE = "place";

    /** The address where the missing return of a location is recorded. */
    public static String missing(String votingLocation) {
        return "intake/transmittals?" + PLACE + "=" + URLEncoder.encode(votingLocation, StandardCharsets.UTF_8);
    }

    private static final int MOST = 999_999;

    Transmittal transmittal() {
        return new Transmittal(
                votingLocation.strip(),
                day,
                bag.strip(),
                sealOut.strip(),
                sealIn.strip(),
                supplied,
                issued,
                spoiled,
                unused,
                returned,
                scannedInError,
                looseBallots);
    }
}
