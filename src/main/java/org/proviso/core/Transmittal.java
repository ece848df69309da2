package org.proviso.core;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A voting location's return of provisional envelopes: its seals and how many it was given, issued, spoiled and sent
 * back. A number the return does not give is null.
 */
public record Transmittal(
        String votingLocation,
        @Nullable LocalDate day,
        String bag,
        String sealOut,
        String sealIn,
        @Nullable Integer supplied,
        int issued,
        int spoiled,
        @Nullable Integer unused,
        int returned,
        @Nullable Integer scannedInError,
        @Nullable Integer looseBallots) {}
